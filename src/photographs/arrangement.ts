// Quadrangles that stand to each other as the four marks of a print do: as large, leaning alike, and as far apart, across and
// down, as some print of this kind has them. Half a turn is left open: the dots tell it.
import type { Point } from '../optics/print/drawing.ts';
import type { PrintKind } from '../optics/print/dots.ts';
import { HALF_SIDE, LEANS } from '../optics/print/marks.ts';
import { radians } from '../optics/quantity.ts';
import { shows } from './between.ts';
import { frameOf, seenFrom, turnedQuad, type MarkView } from './frame.ts';
import type { Pattern } from './pattern.ts';
import { distanceBetween, sidesOfQuad, type Quad } from './quad.ts';
import type { SquaresSeen } from './squaresSeen.ts';

/** How far apart the marks of a print may be, in units of a mark: across, and down. */
export interface Spacing {
  readonly kind: PrintKind;
  /** A mark's corners, as seen from another, may be so many half sides off: what leans away looks smaller at its far end. */
  readonly alike: number;
  /** The last mark may lie so far from where the other three let expect it, as a share of the way across. */
  readonly astray: number;
  /** How well the picture agrees at least with what such a print shows between its marks. */
  readonly agrees: number;
  /** What it shows there; `ratio` is how much farther apart its marks are down than across. */
  readonly patterns: (ratio: number) => readonly Pattern[];
  readonly across: readonly [least: number, most: number];
  readonly down: readonly [least: number, most: number];
}

/** Of a print that faces the camera, tilted by a few degrees. */
export const FLAT = { alike: 0.34, astray: 0.06 } as const;

/** Row by row; each quadrangle with the corner first that is the upper left one if the first mark is. Null where there is none. */
export interface Arrangement {
  readonly quads: readonly [Quad | null, Quad | null, Quad | null, Quad | null];
}

/** Share by which distances may be off: corners are known to half a pixel here, and a tilted print narrows with distance. */
const LOOSE = 0.11;
/** Squares looked at, as each is compared with each, and arrangements: a picture full of squares in rows would take minutes. */
const MOST = 350;
const MOST_TRIES = 300;

/** Whole arrangements first, then those that lack one mark. */
export function arrangementsIn(seen: SquaresSeen, view: number, spacing: Spacing): Arrangement[] {
  const some = seen.inView(view).slice(0, MOST);
  const whole: Arrangement[] = [];
  const parts: Arrangement[] = [];
  const tried = new Set<string>();
  for (const quad of some) {
    const around = within(quad, some, spacing);
    for (const quarters of [0, 1, 2, 3]) {
      const own = turnedQuad(quad, quarters);
      const frame = frameOf(spacing.kind, own);
      const near = neighbours(frame, around, spacing);
      for (const right of near.right) {
        for (const [lower, below] of [...near.below.map((one) => [true, one] as const), ...near.above.map((one) => [false, one] as const)]) {
          const opposite = { x: right.at.x + below.at.x, y: right.at.y + below.at.y };
          const last = nearest(frame, around, spacing, opposite);
          const row = [own, right.quad] as const;
          const other = [below.quad, last] as const;
          const found = lower ? ([...row, ...other] as const) : ([...other, ...row] as const);
          const key = found
            .map((each) => (each ? `${Math.round(each[0].x + each[2].x)},${Math.round(each[0].y + each[2].y)}` : '-'))
            .sort()
            .join(' ');
          if (tried.has(key)) continue;
          if (tried.size === MOST_TRIES) return [...whole, ...parts];
          tried.add(key);
          if (!shows(seen, found, spacing.patterns(Math.hypot(below.at.x, below.at.y) / Math.hypot(right.at.x, right.at.y)), spacing.agrees)) continue;
          (last === null ? parts : whole).push({ quads: found });
        }
      }
    }
  }
  return [...whole, ...parts];
}

/** Those that can be marks of the same print at all, as far away as they are. */
function within(quad: Quad, quads: readonly Quad[], { across, down }: Spacing): readonly Quad[] {
  const unit = Math.max(...sidesOfQuad(quad)) / (2 * HALF_SIDE);
  const farthest = (1 + 2 * LOOSE) * (across[1] + down[1]) * unit;
  return quads.filter((other) => distanceBetween(middleOf(quad), middleOf(other)) < farthest);
}

const middleOf = (quad: Quad): Point => ({ x: (quad[0].x + quad[2].x) / 2, y: (quad[0].y + quad[2].y) / 2 });

interface Neighbour {
  readonly quad: Quad;
  readonly at: Point;
}

function neighbours(frame: MarkView, quads: readonly Quad[], spacing: Spacing): { right: Neighbour[]; below: Neighbour[]; above: Neighbour[] } {
  const { across, down } = spacing;
  const found: { right: Neighbour[]; below: Neighbour[]; above: Neighbour[] } = { right: [], below: [], above: [] };
  for (const quad of quads) {
    const at = seenFrom(frame, middleOf(quad));
    const level = Math.abs(at.y) < LOOSE * Math.abs(at.x);
    const upright = Math.abs(at.x) < LOOSE * Math.abs(at.y);
    const way = level && holds(across, at.x) ? 'right' : upright && holds(down, at.y) ? 'below' : upright && holds(down, -at.y) ? 'above' : null;
    if (way === null) continue;
    const like = alike(frame, quad, spacing);
    if (like) found[way].push({ quad: like, at });
  }
  return found;
}

const holds = ([least, most]: readonly [number, number], value: number): boolean => value > least * (1 - LOOSE) && value < most * (1 + LOOSE);

/** The quadrangle nearest to where the last one must be, if it is near enough. */
function nearest(frame: MarkView, quads: readonly Quad[], spacing: Spacing, wanted: Point): Quad | null {
  const most = spacing.astray * Math.hypot(wanted.x, wanted.y);
  let best: { quad: Quad; off: number } | null = null;
  for (const quad of quads) {
    const at = seenFrom(frame, middleOf(quad));
    const off = Math.hypot(at.x - wanted.x, at.y - wanted.y);
    if (off > most || (best !== null && off >= best.off)) continue;
    const like = alike(frame, quad, spacing);
    if (like) best = { quad: like, off };
  }
  return best?.quad ?? null;
}

/** The quadrangle turned so that it stands like the frame's own mark, where it is like it at all. */
function alike(frame: MarkView, quad: Quad, { kind, alike: most }: Spacing): Quad | null {
  const corners = CORNERS[kind];
  const middle = middleOf(quad);
  for (const quarters of [0, 1, 2, 3]) {
    const turned = turnedQuad(quad, quarters);
    const fits = turned.every((corner, index) => {
      const at = seenFrom(frame, { x: corner.x - middle.x + frame.middle.x, y: corner.y - middle.y + frame.middle.y });
      const wanted = corners[index] ?? at;
      return Math.hypot(at.x - wanted.x, at.y - wanted.y) < most * HALF_SIDE;
    });
    if (fits) return turned;
  }
  return null;
}

const cornersFor = (kind: PrintKind): Point[] => {
  const [cos, sin] = [Math.cos(radians(LEANS[kind])), Math.sin(radians(LEANS[kind]))];
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x = 0, y = 0]) => ({ x: HALF_SIDE * (x * cos - y * sin), y: HALF_SIDE * (x * sin + y * cos) }));
};
const CORNERS: Record<PrintKind, readonly Point[]> = { target: cornersFor('target'), ramp: cornersFor('ramp') };
