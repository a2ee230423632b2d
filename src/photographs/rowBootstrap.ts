// How sure the figure of an edge is: its rows are drawn anew, many times over (B. Efron & R. J. Tibshirani, An Introduction to the Bootstrap, 1993,
// ch. 6 and 13), in blocks of neighbours, since demosaicing and compression make the noise of neighbours alike (H. R. Künsch, Ann. Stat. 17:1217, 1989;
// blocks of the cube root of the rows: P. Hall, J. L. Horowitz & B.-Y. Jing, Biometrika 82:561, 1995). The transform is a
// sum over rows, so each row is transformed once, at a few frequencies about the half.
import { BINS, phaseOf } from './edgeSpread.ts';
import type { EdgeStrip } from './edgeStrip.ts';
import { binningCorrection, transferWeights } from './edgeTransfer.ts';

const DRAWS = 200;
/** Frequencies looked at, as shares of the half's own: nothing, then from two fifths to two and a half times. */
const AROUND = [0, ...Array.from({ length: 15 }, (_, index) => 0.4 * 6.25 ** (index / 14))];

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
  const rows = read.rows.length;
  const transformed = transformRows(read);
  const whole = halfOf(
    meansOf(
      transformed,
      Int32Array.from({ length: rows }, (_, row) => row),
    ),
  );
  const block = Math.max(1, Math.round(Math.cbrt(rows)));
  const logs = Array.from({ length: DRAWS }, () => Math.log(halfOf(meansOf(transformed, drawBlocks(rows, block, random))) / whole));
  const mean = logs.reduce((sum, log) => sum + log, 0) / DRAWS;
  const variance = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / (DRAWS - 1);
  // Means of n drawn from n scatter less than means of n by (n - 1)/n; here n is the rows of one phase.
  const phase = rows / BINS;
  return Math.sqrt((variance * phase) / Math.max(1, phase - 1));
}

interface TransformedRows {
  readonly phases: Uint8Array;
  /** Real and imaginary part at each frequency, row by row, already corrected for the bins. */
  readonly parts: Float64Array;
}

function transformRows({ strip, rows, window, lean, apart, half }: ReadEdge): TransformedRows {
  const parts = new Float64Array(rows.length * AROUND.length * 2);
  const phases = Uint8Array.from(rows, (row) => phaseOf(strip, row));
  for (const [index, share] of AROUND.entries()) {
    const { real, imaginary } = transferWeights(window, share * half, lean);
    const correction = binningCorrection(share * half, lean, apart);
    for (const [place, row] of rows.entries()) {
      let [x, y] = [0, 0];
      for (let at = 0, bin = phases[place]!; at < strip.across; at++, bin += BINS) {
        const pixel = strip.light[row * strip.across + at]!;
        x += pixel * real[bin]!;
        y += pixel * imaginary[bin]!;
      }
      parts[(place * AROUND.length + index) * 2] = correction * x;
      parts[(place * AROUND.length + index) * 2 + 1] = correction * y;
    }
  }
  return { phases, parts };
}

function drawBlocks(rows: number, block: number, random: () => number): Int32Array {
  const drawn = new Int32Array(rows);
  for (let from = 0; from < rows; from += block) {
    const first = Math.floor(random() * rows);
    for (let at = from; at < Math.min(rows, from + block); at++) drawn[at] = (first + at - from) % rows;
  }
  return drawn;
}

/** Size of the transform at each frequency: the sum of the means of the four phases. */
function meansOf({ phases, parts }: TransformedRows, drawn: Int32Array): Float64Array {
  const width = AROUND.length * 2;
  const sums = new Float64Array(BINS * width);
  const counts = [0, 0, 0, 0];
  for (const row of drawn) {
    const phase = phases[row]!;
    counts[phase]!++;
    for (let at = 0; at < width; at++) sums[phase * width + at]! += parts[row * width + at]!;
  }
  return Float64Array.from(AROUND, (_, index) => {
    let [x, y] = [0, 0];
    for (let phase = 0; phase < BINS; phase++) {
      x += sums[phase * width + 2 * index]! / counts[phase]!;
      y += sums[phase * width + 2 * index + 1]! / counts[phase]!;
    }
    return Math.hypot(x, y);
  });
}

/** The half's share of what it was, by a straight line between two frequencies; the ends where it lies beyond them. */
function halfOf(sizes: Float64Array): number {
  const level = sizes[0]! / 2;
  for (let at = 1; at < sizes.length; at++) {
    if (sizes[at]! > level) continue;
    if (at === 1) return AROUND[1]!;
    const part = (sizes[at - 1]! - level) / (sizes[at - 1]! - sizes[at]!);
    return AROUND[at - 1]! + part * (AROUND[at]! - AROUND[at - 1]!);
  }
  return AROUND.at(-1)!;
}
