// Japanese: the printed target and ramp, and the page that prints them.
import type { SheetLabels } from '../../optics/print/sheets.ts';
import type { PrintWords } from '../printWords.ts';
import { benchFault } from './benchFaults.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const PRINT = '用紙に合わせず、100%で印刷してください。';

const sheetsOf = (name: string): SheetLabels => ({
  title: ({ number, of }) => (of === 1 ? name : `${name}、${write.number(of)}枚中${write.number(number)}枚目`),
  foot: ({ number, of, row, column }) =>
    of === 1 ? PRINT : `${PRINT}${write.number(of)}枚中${write.number(number)}枚目：上から${write.number(row)}段目、左から${write.number(column)}列目。`,
});

export const words: PrintWords = {
  whose: ({ lens, body, focalLength, distance: length, unit, day }) => [
    ...(lens && body ? [pair({ lens, body })] : [lens || body].filter(Boolean)),
    `${write.millimetres(focalLength)}・距離${write.distance(length, unit)}、${write.day(day)}`,
  ],
  sizes: (bar, scale) => `線幅${write.number(bar, 2)}\u00a0mm。下の基準目盛：${write.number(scale)}\u00a0mm。`,
  scale: (scale) => `両端の印の外側から外側まで${write.number(scale)}\u00a0mm`,
  ramp: '傾斜スケール：0の線をターゲットの面に合わせ、上端を45°奥へ倒します。数字はミリメートル、+はターゲットの奥です。',
  depth: (depth) => write.signed(depth, 2),
  sheets: { target: sheetsOf('ターゲット'), ramp: sheetsOf('傾斜スケール') },
  page: {
    title: '印刷用のターゲット',
    paper: '用紙',
    papers: { A4: 'A4', Letter: 'レター' },
    drawn: (sheets) =>
      `${sheets === 1 ? 'ターゲットは1枚の用紙に収まり、最後の用紙は傾斜スケールです。' : `ターゲットは${write.number(sheets)}枚に分かれます。マークで合わせて貼ってください。最後の用紙は傾斜スケールです。`}` +
      '用紙に合わせず、余白とヘッダーなしの100%で印刷してください。そのあと、基準目盛を定規で測ります。点の入った四角は、写真の計測に使うため、隠さないでください。',
    noOrder: 'どのターゲットを描くか分かりません。パネルの測定環境から開いてください。',
    fault: benchFault,
  },
};
