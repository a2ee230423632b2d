// Japanese as it is written here: half-width figures, and no space between a number and its counter: 5秒, 1時間10分.
import { writing, type Write } from '../writing.ts';

const plain = writing('ja-JP');

const close = (text: string): string => text.replaceAll(/\u00a0(?=[ぁ-ん一-龠])/gu, '');

export const write: Write = {
  ...plain,
  unit: (...of) => close(plain.unit(...of)),
  duration: (time) => close(plain.duration(time)).replaceAll(' ', ''),
};
