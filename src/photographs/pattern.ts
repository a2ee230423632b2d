// Whether a picture shows what a print has between its marks: the correlation of light with the black and white that is drawn
// there. Squares may stand in rows by chance, or on a board; they have no such field between them.
import type { Point } from '../optics/print/drawing.ts';
import { fieldCells } from '../optics/print/fieldCells.ts';
import { textureStripes } from '../optics/print/rampTexture.ts';
import type { BarCount } from '../optics/print/sequence.ts';
import { through, type Homography } from './homography.ts';
import type { Plane } from './plane.ts';
import { lightAt } from './sharpQuad.ts';

/** Places between the middles of four marks, from 0 to 1 across and down, and whether it is black there. */
export interface PatternPoint {
  readonly at: Point;
  readonly black: boolean;
}

/** Cells compared each way, about. */
const SAMPLES = 31;

/** A field whose marks are `square` bars wide and stand off it by `gap` bars. */
export function fieldPattern(bars: BarCount, square: number, gap: number): PatternPoint[] {
  const cells = fieldCells(bars);
  const step = Math.max(1, Math.round(bars / SAMPLES));
  const [across, down] = [bars - square, bars + square + 2 * gap];
  const points: PatternPoint[] = [];
  for (let row = 0; row < bars; row += step) {
    for (let column = row % 2; column < bars; column += step) {
      // The square in the middle covers a few.
      if (Math.abs(row - bars / 2) < 6 && Math.abs(column - bars / 2) < 6) continue;
      const at = { x: (column + 0.5 - square / 2) / across, y: (row + 0.5 + gap + square / 2) / down };
      points.push({ at, black: cells[row * bars + column] === 1 });
    }
  }
  return points;
}

/** The stripes down the ramp's middle, where even the shortest ramp has them. */
export const stripePattern = (): PatternPoint[] =>
  textureStripes().flatMap(({ from, to, black }) =>
    [0.4, 0.45, 0.5, 0.55, 0.6].flatMap((y) => [0.3, 0.5, 0.7].map((share) => ({ at: { x: from + share * (to - from), y }, black }))),
  );

/** From -1 to 1; half a turn the other way round where `turned`. Even light gives 0. */
export function agreement(plane: Plane, toPicture: Homography, pattern: readonly PatternPoint[], turned: boolean): number {
  let [blacks, sum, squares, products] = [0, 0, 0, 0];
  for (const { at, black } of pattern) {
    const light = lightAt(plane, through(toPicture, turned ? { x: 1 - at.x, y: 1 - at.y } : at));
    sum += light;
    squares += light * light;
    if (!black) continue;
    blacks++;
    products += light;
  }
  const count = pattern.length;
  const spread = (squares / count - (sum / count) ** 2) * (blacks / count) * (1 - blacks / count);
  return spread > 1e-12 ? ((sum / count) * (blacks / count) - products / count) / Math.sqrt(spread) : 0;
}
