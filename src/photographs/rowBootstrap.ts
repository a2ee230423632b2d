// How sure the figure of an edge is: the rows' deviations from their mean are drawn anew, many times over (B. Efron & R. J. Tibshirani, An
// Introduction to the Bootstrap, 1993, ch. 6 and 9.4), in blocks of neighbours, since demosaicing and compression make the noise of
// neighbours alike (H. R. Künsch, Ann. Stat. 17:1217, 1989; blocks of the cube root of the rows: P. Hall, J. L. Horowitz & B.-Y. Jing,
// Biometrika 82:561, 1995). Deviations are drawn, not whole rows: a draw of few rows may miss a phase. The transform is a sum over rows, so each
// row is transformed once, at a few frequencies about the half.
import { BINS, phaseOf } from './edgeSpread.ts';
import type { EdgeStrip } from './edgeStrip.ts';
import { binningCorrection, transferWeights } from './edgeTransfer.ts';

const DRAWS = 120;
/** Frequencies looked at, as shares of the half's own: nothing, then from two fifths to two and a half times. */
const AROUND = [0, ...Array.from({ length: 11 }, (_, index) => 0.4 * 6.25 ** (index / 10))];
/** Real and imaginary part at each of them. */
const PARTS = 2 * AROUND.length;

/** What the figure was read from. */
export interface ReadEdge {
  readonly strip: EdgeStrip;
  readonly rows: readonly number[];
  readonly window: Float64Array;
  readonly lean: number;
  readonly apart: number;
  /** Where half the contrast is left, in cycles a pixel. */
  readonly half: number;
}

/** Standard deviation of the half's frequency, as a share of it. `random` gives numbers from 0 to below 1. */
export function relativeDeviation(read: ReadEdge, random: () => number): number {
  const count = read.rows.length;
  const { whole, deviations, weights } = partRows(read);
  const half = halfOf(whole);
  const block = Math.max(1, Math.round(Math.cbrt(count)));
  const drawn = new Float64Array(PARTS);
  let [sum, squares] = [0, 0];
  for (let draw = 0; draw < DRAWS; draw++) {
    drawn.set(whole);
    for (let from = 0; from < count; from += block) {
      const first = Math.floor(random() * count);
      for (let at = from; at < Math.min(count, from + block); at++) {
        const row = ((first + at - from) % count) * PARTS;
        const weight = weights[at]!;
        for (let part = 0; part < PARTS; part++) drawn[part]! += weight * deviations[row + part]!;
      }
    }
    const log = Math.log(halfOf(drawn) / half);
    sum += log;
    squares += log * log;
  }
  const variance = Math.max(0, squares - sum ** 2 / DRAWS) / (DRAWS - 1);
  // Deviations from the mean of the n rows of a phase are smaller than those from the truth.
  const phase = count / BINS;
  return Math.sqrt((variance * phase) / (phase - 1));
}

interface PartedRows {
  /** The transform of the edge, corrected for the bins. */
  readonly whole: Float64Array;
  /** Of each row's transform from the mean of its phase, row by row. */
  readonly deviations: Float64Array;
  /** What each row counts in the transform: one over the rows of its phase. */
  readonly weights: Float64Array;
}

function partRows({ strip, rows, window, lean, apart, half }: ReadEdge): PartedRows {
  const phases = rows.map((row) => phaseOf(strip, row));
  const counts = [0, 0, 0, 0];
  for (const phase of phases) counts[phase]!++;
  const deviations = new Float64Array(rows.length * PARTS);
  for (const [index, share] of AROUND.entries()) {
    const { real, imaginary } = transferWeights(window, share * half, lean);
    const correction = binningCorrection(share * half, lean, apart);
    for (let place = 0; place < rows.length; place++) {
      const from = rows[place]! * strip.across;
      let [x, y] = [0, 0];
      for (let at = 0, bin = phases[place]!; at < strip.across; at++, bin += BINS) {
        const pixel = strip.light[from + at]!;
        x += pixel * real[bin]!;
        y += pixel * imaginary[bin]!;
      }
      deviations[place * PARTS + 2 * index] = correction * x;
      deviations[place * PARTS + 2 * index + 1] = correction * y;
    }
  }
  const means = new Float64Array(BINS * PARTS);
  for (const [place, phase] of phases.entries()) {
    for (let part = 0; part < PARTS; part++) means[phase * PARTS + part]! += deviations[place * PARTS + part]! / counts[phase]!;
  }
  for (const [place, phase] of phases.entries()) {
    for (let part = 0; part < PARTS; part++) deviations[place * PARTS + part]! -= means[phase * PARTS + part]!;
  }
  const whole = Float64Array.from({ length: PARTS }, (_, part) => [0, 1, 2, 3].reduce((sum, phase) => sum + means[phase * PARTS + part]!, 0));
  return { whole, deviations, weights: Float64Array.from(phases, (phase) => 1 / counts[phase]!) };
}

/** The half's share of what it was, by a straight line between two frequencies; the ends where it lies beyond them. */
function halfOf(transform: Float64Array): number {
  const sizeAt = (index: number): number => Math.sqrt(transform[2 * index]! ** 2 + transform[2 * index + 1]! ** 2);
  const level = sizeAt(0) / 2;
  for (let index = 1, before = 0; index < AROUND.length; index++) {
    const size = sizeAt(index);
    if (size <= level) {
      if (index === 1) return AROUND[1]!;
      return AROUND[index - 1]! + ((before - level) / (before - size)) * (AROUND[index]! - AROUND[index - 1]!);
    }
    before = size;
  }
  return AROUND.at(-1)!;
}
