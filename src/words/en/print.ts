// English: the printed target and ramp, and the page that prints them.
import type { SheetLabels } from '../../optics/print/sheets.ts';
import type { PrintWords } from '../printWords.ts';
import { benchFault } from './benchFaults.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const sheetsOf = (name: string): SheetLabels => ({
  title: ({ number, of }) => (of === 1 ? name : `${name}, sheet ${write.number(number)} of ${write.number(of)}`),
  foot: ({ number, of, row, column }) =>
    of === 1
      ? 'Print at 100%, not fitted to the page.'
      : `Print at 100%, not fitted to the page. Sheet ${write.number(number)} of ${write.number(of)}: row ${write.number(row)}, column ${write.number(column)}.`,
});

export const words: PrintWords = {
  whose: ({ lens, body, focalLength, distance: length, unit, day }) => [
    ...(lens && body ? [pair({ lens, body })] : [lens || body].filter(Boolean)),
    `${write.millimetres(focalLength)} at ${write.distance(length, unit)}, ${write.day(day)}`,
  ],
  sizes: (bar, scale) => `Bars ${write.number(bar, 2)}\u00a0mm. Scale below: ${write.number(scale)}\u00a0mm.`,
  scale: (scale) => `${write.number(scale)}\u00a0mm between the outer edges of the end marks`,
  ramp: 'Ramp: the 0 line lies in the plane of the target, and the top leans back by 45°. Numbers are millimetres. + is behind the target.',
  depth: (depth) => write.signed(depth, 2),
  sheets: { target: sheetsOf('Target'), ramp: sheetsOf('Ramp') },
  page: {
    title: 'Target to print',
    paper: 'Paper',
    papers: { A4: 'A4', Letter: 'Letter' },
    drawn: (sheets) =>
      `${write.count(sheets, {
        one: 'The target is on one sheet and the ramp is on the last.',
        other: 'The target is on # sheets, to be joined at their marks, and the ramp is on the last.',
      })} Print at 100%, not fitted to the page, without margins or headers. Then measure the scale with a rule. Keep the squares with dots uncovered: photographs of the prints are measured by them.`,
    noOrder: 'This page does not know which target to draw. Open it from the bench in the panel.',
    fault: benchFault,
  },
};
