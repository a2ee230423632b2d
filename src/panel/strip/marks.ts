// Where the mark of each hold goes: under its value, oldest on top, and one row lower wherever it would touch another.
import type { Arrows, Light } from '../../sweep/verdict.ts';
import type { Steps } from '../../units.ts';

/** A hold as the strip draws it. */
export interface MarkedHold {
  readonly value: Steps;
  readonly light: Light;
  readonly arrows: Arrows;
  readonly counts: 'in' | 'out';
}

/** Its middle in pixels, its row, and the arrows beside it. */
export interface Mark extends MarkedHold {
  readonly x: number;
  readonly row: number;
  readonly triangles: readonly Triangle[];
}

/** An arrow that was seen; hollow where the two were uneven and nobody said which was the stronger. */
export interface Triangle {
  readonly points: 'left' | 'right';
  readonly filled: boolean;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A mark and its triangles, each in its box. */
export interface DrawnMark extends MarkedHold {
  readonly box: Box;
  readonly triangles: readonly (Triangle & { readonly box: Box })[];
}

/** Width a triangle adds to its side of the mark, as a share of the mark. */
const TRIANGLE = 0.6;
const GAP = 1;

/** Lays the marks out in rows; `xOf` places a value, `size` is the width of a mark. */
export function rowsOf(holds: readonly MarkedHold[], xOf: (value: Steps) => number, size: number): Mark[] {
  const placed: Mark[] = [];
  for (const hold of holds) {
    const mark = { ...hold, x: xOf(hold.value), row: 0, triangles: trianglesOf(hold.arrows) };
    while (placed.some((other) => other.row === mark.row && touch(other, mark, size))) mark.row++;
    placed.push(mark);
  }
  return placed;
}

/** The boxes of a mark whose row begins at `y`. */
export function drawnMark({ x, triangles, value, light, arrows, counts }: Mark, y: number, size: number): DrawnMark {
  const width = TRIANGLE * size;
  const beside = { left: x - size / 2 - width, right: x + size / 2 };
  return {
    value,
    light,
    arrows,
    counts,
    box: { x: x - size / 2, y, width: size, height: size },
    triangles: triangles.map((triangle) => ({ ...triangle, box: { x: beside[triangle.points], y, width, height: size } })),
  };
}

/** The triangles that stand for the arrows that were seen. */
export function trianglesOf(arrows: Arrows): Triangle[] {
  switch (arrows) {
    case 'none':
      return [];
    case 'left':
    case 'right':
      return [{ points: arrows, filled: true }];
    case 'balanced':
    case 'lopsided':
      return (['left', 'right'] as const).map((points) => ({ points, filled: arrows === 'balanced' }));
  }
}

function touch(one: Mark, other: Mark, size: number): boolean {
  const [left, right] = one.x <= other.x ? [one, other] : [other, one];
  return reach(left, 'right', size) + GAP > reach(right, 'left', size);
}

function reach({ x, triangles }: Mark, side: 'left' | 'right', size: number): number {
  const out = size / 2 + (triangles.some(({ points }) => points === side) ? TRIANGLE * size : 0);
  return side === 'left' ? x - out : x + out;
}
