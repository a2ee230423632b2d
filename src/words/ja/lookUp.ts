// Japanese: the answer to a look-up. 「Velde M1とOrrin 85 f/1.8、85 mm・距離4.25 m:プラス6、2026年3月3日設定。」
import type { Shelved } from '../../logbook/shelf.ts';
import { sayCorrection } from '../../hearing/languages/ja/sayCorrection.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { line } from '../line.ts';
import type { LookUpWords } from '../lookUpWords.ts';
import { together } from './sentence.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

function best({ subject, value, at, state, measured }: Shelved): string {
  const about = `${pair(subject)}、${place(subject)}`;
  if (state === 'never measured') return `${about}：未測定です。`;
  if (value === null || at === null) return `${about}：測定しましたが、値は得られませんでした。`;
  const day = write.day(at);
  switch (state) {
    case 'measured':
      return `${about}：${sayCorrection(value)}、${day}測定、未設定です。`;
    case 'entered':
      return `${about}：${sayCorrection(value)}、${day}設定です。`;
    case 'differ':
      return `${about}：${sayCorrection(value)}、${day}設定です。ただし測定値は${sayCorrection(measured?.chosen ?? value)}です。`;
  }
}

const nothing = '記録帳に合うものがありません。';

/** What is said of the first: its value, and whether the pair belongs in a workshop. */
const first = (one: Shelved): string => together(best(one), one.measured?.service && 'サービスでの点検が必要です。');

const inLine = ({ subject: { lens, body, focalLength, distance }, value }: Shelved): string =>
  `${value === null ? '値なし' : writeSteps(value)}  ${line([lens, body, write.millimetres(focalLength), write.distance(millimetres(distance))])}`;

export const words: LookUpWords = {
  answer: ([one, ...more]) =>
    one === undefined ? nothing : together(first(one), more.length > 0 && `ほかに${write.number(more.length)}件の組み合わせが画面にあります。`),
  listed: ([one, ...more]) => (one === undefined ? nothing : together(first(one), more.length > 0 && `ほかに：${more.map(inLine).join('、')}。`)),
  line: inLine,
  tryFewer: '記録帳に合うものがありません。文字を減らして試してください。',
  unread: '今は記録帳を読み込めません。パネルを開いてください。',
};
