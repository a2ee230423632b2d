// Everything in a picture that could be a mark, from the coarsest view to the picture itself. A mark is seen in two views at
// least; the finer ones are looked at only when they are asked for.
import { darkSpots } from './darkSpots.ts';
import { boxOf, type PixelSource } from './pixelSource.ts';
import type { Plane } from './plane.ts';
import { quadOf, sidesOfQuad, type Quad } from './quad.ts';
import { halve } from './shrink.ts';

export interface SquaresSeen {
  readonly picture: PixelSource;
  readonly views: number;
  /** In pixels of the picture; views count from 0, the coarsest. */
  readonly inView: (view: number) => readonly Quad[];
  /** What lies between marks, as coarse as it may be for that. At least one mark. */
  readonly between: (marks: readonly Quad[]) => View;
  /** All of the picture, as coarse as it is at hand. */
  readonly whole: () => View;
}

interface View {
  readonly plane: Plane;
  /** Pixels of the picture to a pixel here. */
  readonly factor: number;
}

/** Sides of marks in pixels of a view. */
const LEAST_SIDE = 6.5;
const MOST_BOX = 44;
/** The side of a mark between which the narrowest bars, a ninth of it, are still two pixels wide. */
const SHOWING_SIDE = 20;
/** Longest side of the coarsest view, and of the one that the coarser ones are made of. */
const SMALLEST = 320;
const BASE = 800;

export function lookAt(picture: PixelSource): SquaresSeen {
  const factors = factorsFor(picture);
  const base = factors.find((factor) => Math.max(picture.width, picture.height) <= BASE * factor) ?? 1;
  const planes = new Map<number, Plane>();
  const viewAt = (factor: number): View => {
    const plane = planes.get(factor) ?? (factor > base ? halve(viewAt(factor / 2).plane) : picture.reduced(factor));
    planes.set(factor, plane);
    return { plane, factor };
  };
  const known = new Map<number, readonly Quad[]>();
  return {
    picture,
    views: factors.length,
    inView: (view) => {
      const squares = known.get(view) ?? squaresAt(viewAt(factors.at(-1 - view) ?? 1));
      known.set(view, squares);
      return squares;
    },
    between: (marks) => {
      const side = Math.min(...marks.flatMap(sidesOfQuad));
      const factor = factors.findLast((each) => side >= SHOWING_SIDE * each) ?? 1;
      return factor >= base ? viewAt(factor) : { plane: picture.around(boxOf(marks.flat(), 2)), factor: 1 };
    },
    whole: () => viewAt(base),
  };
}

/** From 1, each twice the one before. */
function factorsFor({ width, height }: PixelSource): number[] {
  const factors = [1];
  for (let factor = 1; Math.max(width, height) > SMALLEST * factor && Math.floor(Math.min(width, height) / factor) >= 2;) factors.push((factor *= 2));
  return factors;
}

function squaresAt({ plane, factor }: View): Quad[] {
  return darkSpots(plane, LEAST_SIDE, MOST_BOX).flatMap((spot) => {
    const quad = quadOf(spot);
    if (quad === null || Math.min(...sidesOfQuad(quad)) < 0.7 * LEAST_SIDE) return [];
    const [a, b, c, d] = quad.map(({ x, y }) => ({ x: factor * x, y: factor * y }));
    return a && b && c && d ? [[a, b, c, d] as const] : [];
  });
}
