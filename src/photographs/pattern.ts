// Whether a picture shows what a print has between its marks: the correlation of light with the black and white that is drawn
// there. Squares may stand in rows by chance, or on a board; they have no such field between them.
import { fieldCells } from '../optics/print/fieldCells.ts';
import { textureStripes } from '../optics/print/rampTexture.ts';
import type { BarCount } from '../optics/print/sequence.ts';
import type { Homography } from './homography.ts';
import type { Plane } from './plane.ts';
import { lightAtPlace } from './sharpQuad.ts';

/** Places between the middles of four marks, from 0 to 1 across and down, and whether it is black there; in an order in which any run of them is spread over all. */
export interface Pattern {
  readonly across: Float64Array;
  readonly down: Float64Array;
  readonly black: Uint8Array;
}

interface PatternPoint {
  readonly x: number;
  readonly y: number;
  readonly black: boolean;
}

/** Cells compared each way, about. */
const SAMPLES = 31;
/** A stride through the points that has no factor in common with their count. */
const STRIDES = [61, 67, 71, 73];
/** Points of the first look, and how far below what is wanted it may fall: three deviations of chance (R. A. Fisher, Biometrika 10, 1915). */
const FIRST_LOOK = 128;
const SHORT = 0.2;

function patternOf(points: readonly PatternPoint[]): Pattern {
  const stride = STRIDES.find((each) => points.length % each !== 0) ?? 1;
  const spread = points.map((_, index) => points[(index * stride) % points.length]!);
  return {
    across: Float64Array.from(spread, ({ x }) => x),
    down: Float64Array.from(spread, ({ y }) => y),
    black: Uint8Array.from(spread, ({ black }) => (black ? 1 : 0)),
  };
}

/** A field whose marks are `square` bars wide and stand off it by `gap` bars. */
export function fieldPattern(bars: BarCount, square: number, gap: number): Pattern {
  const cells = fieldCells(bars);
  const step = Math.max(1, Math.round(bars / SAMPLES));
  const [across, down] = [bars - square, bars + square + 2 * gap];
  const points: PatternPoint[] = [];
  for (let row = 0; row < bars; row += step) {
    for (let column = row % 2; column < bars; column += step) {
      // The square in the middle covers a few.
      if (Math.abs(row - bars / 2) < 6 && Math.abs(column - bars / 2) < 6) continue;
      points.push({ x: (column + 0.5 - square / 2) / across, y: (row + 0.5 + gap + square / 2) / down, black: cells[row * bars + column] === 1 });
    }
  }
  return patternOf(points);
}

/** The stripes down the ramp's middle, where even the shortest ramp has them. */
export const stripePattern = (): Pattern =>
  patternOf(
    textureStripes().flatMap(({ from, to, black }) =>
      [0.4, 0.45, 0.5, 0.55, 0.6].flatMap((y) => [0.3, 0.5, 0.7].map((share) => ({ x: from + share * (to - from), y, black }))),
    ),
  );

/** Whether light and pattern correlate by more than `least`, from -1 to 1; half a turn the other way round where `turned`. Even light correlates with nothing. */
export function agrees(plane: Plane, toPicture: Homography, pattern: Pattern, turned: boolean, least: number): boolean {
  const count = pattern.black.length;
  // Most of what is looked at is no print: a few places show that.
  return (
    (count < 2 * FIRST_LOOK || correlation(plane, toPicture, pattern, turned, FIRST_LOOK) > least - SHORT) &&
    correlation(plane, toPicture, pattern, turned, count) > least
  );
}

/** Over the first so many places. Written out, as it is reckoned hundreds of thousands of times in a page of text. */
function correlation(plane: Plane, [a, b, c, d, e, f, g, h, i]: Homography, { across, down, black }: Pattern, turned: boolean, count: number): number {
  let [blacks, sum, squares, products] = [0, 0, 0, 0];
  for (let at = 0; at < count; at++) {
    const x = turned ? 1 - across[at]! : across[at]!;
    const y = turned ? 1 - down[at]! : down[at]!;
    const w = g * x + h * y + i;
    const light = lightAtPlace(plane, (a * x + b * y + c) / w, (d * x + e * y + f) / w);
    sum += light;
    squares += light * light;
    if (black[at] === 0) continue;
    blacks++;
    products += light;
  }
  const spread = (squares / count - (sum / count) ** 2) * (blacks / count) * (1 - blacks / count);
  return spread > 1e-12 ? ((sum / count) * (blacks / count) - products / count) / Math.sqrt(spread) : 0;
}
