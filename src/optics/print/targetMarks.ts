// Where the target's marks and slanted edges lie. All follows from the bars, so that a photograph in which the dots are
// read gives the true drawn length of everything.
import type { Point } from './drawing.ts';
import { fourMarks, LEANS, type PrintMark } from './marks.ts';
import type { TargetSizes } from './measure.ts';
import { sidesOf, type SlantedEdge } from './slantedEdge.ts';

/** The field's middle: places count from it where nothing else is said. */
export const FIELD_MIDDLE: Point = { x: 0, y: 0 };

/** How far the marks' middles lie apart, across and down. */
const marksApart = ({ field, square, gap }: TargetSizes): Point => ({ x: field - square, y: field + 2 * gap + square });

/** The marks at the field's corners, above and below it. */
export const targetMarks = (sizes: TargetSizes, middle: Point = FIELD_MIDDLE): PrintMark[] =>
  fourMarks('target', sizes.index, middle, marksApart(sizes), sizes.square);

/** The leaning square that the centre AF point is laid on. */
export const middleSquare = ({ bar }: TargetSizes, middle: Point = FIELD_MIDDLE): Pick<PrintMark, 'middle' | 'box' | 'lean'> => ({
  middle,
  box: 7 * bar,
  lean: LEANS.target,
});

/** The edges to measure sharpness on: those in the middle first. */
export const targetEdges = (sizes: TargetSizes): SlantedEdge[] => [
  ...sidesOf(middleSquare(sizes), 'middle'),
  ...targetMarks(sizes).flatMap((mark) => sidesOf(mark, 'corner')),
];
