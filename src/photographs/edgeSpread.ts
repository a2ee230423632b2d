// The edge spread: how the light rises across the edge, four times as finely as the pixels stand, from the rows that a leaning
// edge crosses at different parts of a pixel (ISO 12233:2017, annex D). A row meets every fourth bin, so the rows fall into
// four phases, and each bin is the mean of one phase's pixels.
import type { EdgeStrip } from './edgeStrip.ts';

/** Bins a pixel. */
export const BINS = 4;

export interface EdgeSpread {
  /** Mean light of each bin, as at its middle; the edge lies in the middle, between two bins. */
  readonly light: Float64Array;
  /** Rows of each of the four phases. */
  readonly counts: readonly number[];
  /** Variance of the places of a bin's pixels about their mean, in bins squared: 1/12 where they fill it evenly. */
  readonly apart: number;
  /** Standard deviation of one pixel about its bin, where nothing rises. */
  readonly noise: number;
}

/** Where a row's first pixel lies, in bins from the strip's beginning. */
const placeOf = ({ start, reach }: EdgeStrip, row: number): number => (start[row]! + reach) * BINS;

/** Which of the bins a row meets first. */
export const phaseOf = (strip: EdgeStrip, row: number): number => Math.min(BINS - 1, Math.floor(placeOf(strip, row)));

/** Null where a phase has no row: the edge then leans too little for these rows. */
export function edgeSpread(strip: EdgeStrip, rows: readonly number[]): EdgeSpread | null {
  const { across, light } = strip;
  const sums = new Float64Array(BINS * across);
  const squares = new Float64Array(BINS * across);
  const counts = [0, 0, 0, 0];
  const places = [0, 0, 0, 0];
  let placesSquared = 0;
  for (const row of rows) {
    const phase = phaseOf(strip, row);
    const place = placeOf(strip, row) - phase - 0.5;
    counts[phase]!++;
    places[phase]! += place;
    placesSquared += place * place;
    for (let at = 0; at < across; at++) {
      const pixel = light[row * across + at]!;
      sums[phase + BINS * at]! += pixel;
      squares[phase + BINS * at]! += pixel * pixel;
    }
  }
  if (counts.some((count) => count === 0)) return null;
  const means = sums.map((sum, bin) => sum / counts[bin % BINS]!);
  const off = places.map((sum, phase) => sum / counts[phase]!);
  const apart = (placesSquared - off.reduce((sum, each, phase) => sum + counts[phase]! * each * each, 0)) / rows.length;
  return { light: centred(means, off), counts, apart, noise: noiseOf(sums, squares, counts) };
}

/** Where few phases meet, as at an edge that shifts by a pixel in five rows, the pixels of a bin lie off its middle: moved there by the slope. */
function centred(means: Float64Array, off: readonly number[]): Float64Array {
  const offOf = (bin: number): number => off[bin % BINS]!;
  return means.map((mean, bin) => {
    if (bin === 0 || bin === means.length - 1) return mean;
    const slope = (means[bin + 1]! - means[bin - 1]!) / (2 + offOf(bin + 1) - offOf(bin - 1));
    return mean - offOf(bin) * slope;
  });
}

/** Of the middlemost bin by its variance: other things in the strip, which lie across its bins, and the edge itself meet fewer than half of them. */
function noiseOf(sums: Float64Array, squares: Float64Array, counts: readonly number[]): number {
  const variances = sums.map((sum, bin) => {
    const count = counts[bin % BINS]!;
    return count < 2 ? 0 : Math.max(0, squares[bin]! - sum ** 2 / count) / (count - 1);
  });
  return Math.sqrt(variances.sort()[Math.floor(variances.length / 2)]!);
}

/** Mean of a run of bins, cut at the ends. */
export function meanOf(light: Float64Array, from: number, end: number): number {
  const [first, last] = [Math.max(0, from), Math.min(light.length, end)];
  let sum = 0;
  for (let bin = first; bin < last; bin++) sum += light[bin]!;
  return sum / (last - first);
}
