// Japanese: saying that a value stands in the camera now.
import { writeSteps } from '../../sweep/scale.ts';
import type { EnteredWords } from '../enteredWords.ts';
import { within } from './subject.ts';

export const words: EnteredWords = {
  title: 'カメラに設定済み',
  value: 'カメラの値',
  offTheScale: (scale) => `${within(scale)}の補正値を入力してください。`,
  mark: '設定済みとして保存',
  marked: (value) => `記録しました。カメラの値は${writeSteps(value)}です。`,
};
