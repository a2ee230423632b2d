// Everything in a picture that could be a mark, from the coarsest view to the picture itself. A mark is seen in two views at
// least; the finer ones are looked at only when they are asked for.
import { darkSpots } from './darkSpots.ts';
import type { Plane } from './plane.ts';
import { quadOf, sidesOfQuad, type Quad } from './quad.ts';
import { levelsOf, type PyramidLevel } from './shrink.ts';

export interface SquaresSeen {
  readonly plane: Plane;
  readonly views: number;
  /** In pixels of the picture; views count from 0, the coarsest. */
  readonly inView: (view: number) => readonly Quad[];
}

/** Sides of marks in pixels of a view. */
const LEAST_SIDE = 6.5;
const MOST_BOX = 44;

export function lookAt(plane: Plane): SquaresSeen {
  const levels = levelsOf(plane).toReversed();
  const known = new Map<number, readonly Quad[]>();
  return {
    plane,
    views: levels.length,
    inView: (view) => {
      const level = levels[view];
      const squares = known.get(view) ?? (level ? squaresAt(level) : []);
      known.set(view, squares);
      return squares;
    },
  };
}

function squaresAt({ plane, factor }: PyramidLevel): Quad[] {
  return darkSpots(plane, LEAST_SIDE, MOST_BOX).flatMap((spot) => {
    const quad = quadOf(spot);
    if (quad === null || Math.min(...sidesOfQuad(quad)) < 0.7 * LEAST_SIDE) return [];
    const [a, b, c, d] = quad.map(({ x, y }) => ({ x: factor * x, y: factor * y }));
    return a && b && c && d ? [[a, b, c, d] as const] : [];
  });
}
