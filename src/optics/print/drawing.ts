// A printed page as data: what is drawn, in millimetres from its upper left corner. The order is the painting order.
import type { Millimetres } from '../../units.ts';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export type Ink = 'black' | 'white';

export type Shape =
  | {
      readonly kind: 'rectangle';
      readonly at: Point;
      readonly width: number;
      readonly height: number;
      readonly ink: Ink;
    }
  | { readonly kind: 'polygon'; readonly corners: readonly Point[]; readonly ink: Ink }
  | { readonly kind: 'disc'; readonly middle: Point; readonly radius: number; readonly ink: Ink }
  /** `size` is the height of the letters' line; `at` is on the base line, at the start or the middle of the text. */
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly size: number;
      readonly text: string;
      readonly from: 'start' | 'middle';
    };

export interface Drawing {
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly shapes: readonly Shape[];
}

export const rectangle = (x: number, y: number, width: number, height: number, ink: Ink = 'black'): Shape => ({
  kind: 'rectangle',
  at: { x, y },
  width,
  height,
  ink,
});

/** White, on something black. */
export const disc = (middle: Point, radius: number): Shape => ({ kind: 'disc', middle, radius, ink: 'white' });

export const text = (x: number, y: number, size: number, words: string, from: 'start' | 'middle' = 'start'): Shape => ({
  kind: 'text',
  at: { x, y },
  size,
  text: words,
  from,
});

/** A square whose sides lean by an angle in degrees, that just fits a box of this size. */
export function leaningSquare(middle: Point, box: number, angle: number): Shape {
  const turn = (angle * Math.PI) / 180;
  const half = box / (Math.cos(turn) + Math.abs(Math.sin(turn))) / 2;
  const corner = (x: number, y: number): Point => ({
    x: middle.x + half * (x * Math.cos(turn) - y * Math.sin(turn)),
    y: middle.y + half * (x * Math.sin(turn) + y * Math.cos(turn)),
  });
  return { kind: 'polygon', corners: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], ink: 'black' };
}
