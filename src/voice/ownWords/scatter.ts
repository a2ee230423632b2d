// How one and the same word scatters from take to take: the covariance of takes laid over each other, by which all
// distances are then measured (Mahalanobis 1936; within-class normalisation). What varies by itself counts little.
import { align } from './alignment.ts';
import type { Cepstra } from './cepstra.ts';

/** A part of the mean variance is added to each direction, so that few takes cannot make one of them sharp. */
const STEADY = 0.1;

export type Measure = (shape: Cepstra) => Cepstra;

/** From the takes of each word to the measure of all shapes; without two takes of any word, shapes stay as they are. */
export function scatterOf(words: readonly (readonly Cepstra[])[]): Measure {
  const width = words.flat()[0]?.width ?? 0;
  const sums = Array.from({ length: width }, () => new Float64Array(width));
  const difference = new Float32Array(width);
  let count = 0;
  for (const takes of words) {
    for (const [index, one] of takes.entries()) {
      for (const other of takes.slice(index + 1)) {
        for (const pair of align(one, other).way) {
          const from = Math.floor(pair / other.length) * width;
          const to = (pair % other.length) * width;
          for (let k = 0; k < width; k++) difference[k] = one.values[from + k]! - other.values[to + k]!;
          for (let k = 0; k < width; k++) for (let l = 0; l <= k; l++) sums[k]![l]! += difference[k]! * difference[l]!;
          count++;
        }
      }
    }
  }
  return count === 0 ? (shape) => shape : whitening(sums.map((row) => row.map((sum) => sum / count)));
}

/** Solves L x = shape for the Cholesky factor L of the covariance, row by row. */
function whitening(covariance: readonly Float64Array[]): Measure {
  const width = covariance.length;
  const added = (STEADY * covariance.reduce((sum, row, k) => sum + row[k]!, 0)) / width;
  const factor = Array.from({ length: width }, () => new Float64Array(width));
  for (let k = 0; k < width; k++) {
    for (let l = 0; l <= k; l++) {
      let rest = covariance[k]![l]! + (k === l ? added : 0);
      for (let i = 0; i < l; i++) rest -= factor[k]![i]! * factor[l]![i]!;
      factor[k]![l] = k === l ? Math.sqrt(rest) : rest / factor[l]![l]!;
    }
  }
  return ({ values, length }) => {
    const out = Float32Array.from(values);
    for (let from = 0; from < out.length; from += width) {
      for (let k = 0; k < width; k++) {
        let rest = out[from + k]!;
        for (let i = 0; i < k; i++) rest -= factor[k]![i]! * out[from + i]!;
        out[from + k] = rest / factor[k]![k]!;
      }
    }
    return { values: out, length, width };
  };
}
