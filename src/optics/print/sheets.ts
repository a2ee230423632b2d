// The target cut to paper at true size. Neighbouring sheets repeat a strip of the drawing; short strokes in the
// margins and small crosses in the strip show where they join: cut one sheet along the line through its strokes and
// lay it on the other.
import { millimetres, type Millimetres } from '../../units.ts';
import { rectangle, text, type Drawing, type Shape } from './drawing.ts';
import { pageToSvg, shapeToSvg, windowToSvg } from './svg.ts';

export type PaperName = 'A4' | 'Letter';
export interface Paper {
  readonly width: Millimetres;
  readonly height: Millimetres;
}
/** ISO 216 and ANSI/ASME Y14.1 (8.5 x 11 in). */
export const PAPERS: Record<PaperName, Paper> = {
  A4: { width: millimetres(210), height: millimetres(297) },
  Letter: { width: millimetres(215.9), height: millimetres(279.4) },
};

/** Printers leave about five millimetres blank; the join marks need room beyond. */
const MARGIN = 8;
const OVERLAP = 10;

export interface Sheet {
  /** Counted from 1, row by row. */
  readonly number: number;
  readonly of: number;
  readonly row: number;
  readonly column: number;
  /** The window of the drawing on this sheet. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly svg: string;
}

/** Windows along one side: as many as needed, all of one size, each sharing the overlap with the next. */
export function windows(length: number, usable: number): { readonly starts: readonly number[]; readonly size: number } {
  if (length <= usable) return { starts: [0], size: length };
  const count = Math.ceil((length - OVERLAP) / (usable - OVERLAP));
  const size = (length + OVERLAP * (count - 1)) / count;
  return { starts: Array.from({ length: count }, (_, index) => index * (size - OVERLAP)), size };
}

/** How many sheets of this paper the drawing takes. */
export function sheetCount(drawing: Drawing, name: PaperName): number {
  const { across, down } = cut(drawing, name);
  return across.starts.length * down.starts.length;
}

const cut = ({ width, height }: Drawing, name: PaperName) => ({
  across: windows(width, PAPERS[name].width - 2 * MARGIN),
  down: windows(height, PAPERS[name].height - 2 * MARGIN),
});

/** Which of the sheets, and what is written on it: a name for a screen reader, and a line at its foot. */
type SheetPlace = Pick<Sheet, 'number' | 'of' | 'row' | 'column'>;
export interface SheetLabels {
  readonly title: (at: SheetPlace) => string;
  readonly foot: (at: SheetPlace) => string;
}

/** All sheets, with their SVG. */
export function sheets(drawing: Drawing, name: PaperName, labels: SheetLabels): Sheet[] {
  const paper = PAPERS[name];
  const { across, down } = cut(drawing, name);
  const of = across.starts.length * down.starts.length;
  return down.starts.flatMap((top, row) =>
    across.starts.map((left, column) => {
      const at = { number: row * across.starts.length + column + 1, of, row: row + 1, column: column + 1 };
      const on = { x: (paper.width - across.size) / 2, y: (paper.height - down.size) / 2 };
      const xs = joins(across, column).map((at) => on.x + at);
      const ys = joins(down, row).map((at) => on.y + at);
      const marks = [...joinMarks(xs, ys, on, across.size, down.size), text(paper.width / 2, paper.height - 5, 2.6, labels.foot(at), 'middle')];
      const content = windowToSvg(drawing, on, { x: left, y: top }, across.size, down.size) + marks.map(shapeToSvg).join('');
      const svg = pageToSvg(paper.width, paper.height, labels.title(at), content);
      return { ...at, left, top, width: across.size, height: down.size, svg };
    }),
  );
}

/** The middles of the strips this window shares, measured from its own start. */
function joins({ starts, size }: { starts: readonly number[]; size: number }, index: number): number[] {
  const before = index > 0 ? [OVERLAP / 2] : [];
  return index < starts.length - 1 ? [...before, size - OVERLAP / 2] : before;
}

/** Strokes in the margin at both ends of each join, and a cross on it near each end, black on white. */
function joinMarks(xs: readonly number[], ys: readonly number[], on: { readonly x: number; readonly y: number }, width: number, height: number): Shape[] {
  const stroke = 2.5;
  const thin = 0.2;
  const upright = xs.flatMap((x) => [
    rectangle(x - thin / 2, on.y - stroke - 0.5, thin, stroke),
    rectangle(x - thin / 2, on.y + height + 0.5, thin, stroke),
    ...[on.y + OVERLAP / 2, on.y + height - OVERLAP / 2].flatMap((y) => cross(x, y)),
  ]);
  const level = ys.flatMap((y) => [
    rectangle(on.x - stroke - 0.5, y - thin / 2, stroke, thin),
    rectangle(on.x + width + 0.5, y - thin / 2, stroke, thin),
    ...[on.x + OVERLAP / 2, on.x + width - OVERLAP / 2].flatMap((x) => cross(x, y)),
  ]);
  return [...upright, ...level];
}

const cross = (x: number, y: number): Shape[] => [
  rectangle(x - 2, y - 0.4, 4, 0.8, 'white'),
  rectangle(x - 0.4, y - 2, 0.8, 4, 'white'),
  rectangle(x - 2, y - 0.1, 4, 0.2),
  rectangle(x - 0.1, y - 2, 0.2, 4),
];
