// The marks by which a program finds a print in a photograph, and their one description for drawing and for finding: black
// squares that lean a little, each with up to four white dots. Their sides are slanted edges as well.
import { degrees, radians, type Degrees } from '../quantity.ts';
import { disc, leaningSquare, type Point, type Shape } from './drawing.ts';
import { dotsFor, type PrintKind } from './dots.ts';

/** Row by row, as a page is read. */
export const MARK_NAMES = ['upper left', 'upper right', 'lower left', 'lower right'] as const;
export type MarkName = (typeof MARK_NAMES)[number];

/** The usual angle of a slanted edge. The ramp's marks lean the other way. */
export const LEANS: Record<PrintKind, Degrees> = { target: degrees(5), ramp: degrees(-5) };
/** The box that a mark just fits, in units of its own. */
export const MARK_BOX = 9;
/** A dot's middle from the mark's, along its sides, and a dot's radius, in those units. */
const DOT_OFFSET = 1.35;
const DOT_RADIUS = 1;

export interface PrintMark {
  readonly name: MarkName;
  readonly middle: Point;
  /** Side of the box, in millimetres. */
  readonly box: number;
  readonly lean: Degrees;
  readonly dots: readonly boolean[];
}

/** Four marks round a middle, so far apart across and down, whose dots say a number. */
export function fourMarks(kind: PrintKind, number: number, middle: Point, apart: { readonly x: number; readonly y: number }, box: number): PrintMark[] {
  const dots = dotsFor(kind, number);
  return MARK_NAMES.map((name, index) => ({
    name,
    middle: { x: middle.x + ((index % 2) - 0.5) * apart.x, y: middle.y + (Math.floor(index / 2) - 0.5) * apart.y },
    box,
    lean: LEANS[kind],
    dots: dots.slice(4 * index, 4 * index + 4),
  }));
}

/** Where something stands that lies so far from a mark's middle along its sides, in the mark's units. */
export function onMark({ middle, box, lean }: Pick<PrintMark, 'middle' | 'box' | 'lean'>, x: number, y: number): Point {
  const turn = radians(lean);
  const unit = box / MARK_BOX;
  return {
    x: middle.x + unit * (x * Math.cos(turn) - y * Math.sin(turn)),
    y: middle.y + unit * (x * Math.sin(turn) + y * Math.cos(turn)),
  };
}

/** Half a side of the mark in its units: it leans inside its box. */
export const HALF_SIDE = MARK_BOX / (Math.cos(radians(LEANS.target)) + Math.abs(Math.sin(radians(LEANS.target)))) / 2;

/** Its corners, clockwise from the upper left one. */
export const markCorners = (mark: Pick<PrintMark, 'middle' | 'box' | 'lean'>): readonly [Point, Point, Point, Point] => [
  onMark(mark, -HALF_SIDE, -HALF_SIDE),
  onMark(mark, HALF_SIDE, -HALF_SIDE),
  onMark(mark, HALF_SIDE, HALF_SIDE),
  onMark(mark, -HALF_SIDE, HALF_SIDE),
];

export const DOT_PLACES: readonly Point[] = [-1, 1].flatMap((y) => [-1, 1].map((x) => ({ x: x * DOT_OFFSET, y: y * DOT_OFFSET })));

export const drawMark = (mark: PrintMark): Shape[] => [
  leaningSquare(mark.middle, mark.box, mark.lean),
  ...DOT_PLACES.flatMap(({ x, y }, index) => (mark.dots[index] === true ? [disc(onMark(mark, x, y), (DOT_RADIUS * mark.box) / MARK_BOX)] : [])),
];
