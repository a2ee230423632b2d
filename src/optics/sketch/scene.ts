// A sketch of the rig as data: strokes and labels in units of its view box, one to a pixel of the screen. The order is the
// painting order.
import type { Point } from '../print/drawing.ts';
import { lettersIn, wrapWords } from '../print/wrapWords.ts';

export type RigPart = 'axis' | 'ray' | 'depth' | 'allowed' | 'camera' | 'lens' | 'measure' | 'print' | 'field' | 'ramp' | 'lamp';

export type Stroke =
  | { readonly part: RigPart; readonly is: 'line' | 'area'; readonly points: readonly Point[] }
  | { readonly part: RigPart; readonly is: 'disc'; readonly middle: Point; readonly radius: number };

/** What stands on the sketch: what is to be known of a rig before it is built. */
export type Answer = 'stands' | 'light' | 'square' | 'prints' | 'depth';
export type View = 'from the side' | 'from above' | 'at the target';

export interface Bounds {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Lines of text below each other; `at` is on the base line of the first, at the end that `anchor` names. */
export interface Label {
  readonly of: Answer | View;
  readonly lines: readonly string[];
  readonly anchor: 'start' | 'middle' | 'end';
  readonly at: Point;
  /** No letter is drawn outside it. */
  readonly box: Bounds;
}

export interface Sketch {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label[];
}

/** From line to line; the letters are 14 units high, and on average less than 9 wide. */
export const LINE = 17;
const LETTER = 0.55 * LINE;
const BASE = 13;

/** Words within a strip of the sketch, broken into as many lines as they need. */
export function label(of: Label['of'], words: string, anchor: Label['anchor'], strip: Pick<Bounds, 'x' | 'y' | 'width'>): Label {
  const lines = wrapWords(words, LINE, strip.width);
  const width = Math.min(strip.width, LETTER * Math.max(...lines.map(lettersIn), 0));
  const free = strip.width - width;
  const x = strip.x + { start: 0, middle: free / 2, end: free }[anchor];
  const at = { x: x + { start: 0, middle: width / 2, end: width }[anchor], y: strip.y + BASE };
  return { of, lines, anchor, at, box: { x, y: strip.y, width, height: LINE * lines.length } };
}

export const lineOf = (part: RigPart, ...points: readonly Point[]): Stroke => ({ part, is: 'line', points });
export const patchOf = (part: RigPart, ...points: readonly Point[]): Stroke => ({ part, is: 'area', points });

export const plateOf = (part: RigPart, x: number, y: number, width: number, height: number): Stroke =>
  patchOf(part, { x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height });
