// How alike two shapes are when one is stretched to fit the other: dynamic time warping with symmetric steps (Sakoe and
// Chiba 1978). Both may begin and end a little earlier or later at no cost, because the ends of a word drown in noise.
import type { Cepstra } from './cepstra.ts';

export interface Alignment {
  /** The mean distance along the way. */
  readonly apart: number;
  /** The share of the way on which one of the two stands still. */
  readonly warped: number;
  /** The pairs of rows that lie on the way, last first: `row * other.length + other row`. */
  readonly way: readonly number[];
  /** For each row of the first, the least distance on the way; infinite where the way leaves the row out. */
  readonly along: Float32Array;
}

const LOOSE = 14;
const BAND = 0.35;
const DIAGONAL = 1;
const DOWN = 2;
const ALONG = 3;

let costs = new Float32Array(0);
let weights = new Float32Array(0);
let local = new Float32Array(0);
let steps = new Uint8Array(0);

export function align(a: Cepstra, b: Cepstra): Alignment {
  const [n, m] = [a.length, b.length];
  const row = m + 1;
  const cells = (n + 1) * row;
  if (costs.length < cells) {
    [costs, weights, local] = [new Float32Array(cells), new Float32Array(cells), new Float32Array(cells)];
    steps = new Uint8Array(cells);
  }
  costs.fill(Infinity, 0, cells);
  weights.fill(0, 0, cells);
  steps.fill(0, 0, cells);
  const loose = Math.min(LOOSE, n >> 2, m >> 2);
  const reach = Math.max(8, Math.ceil(BAND * Math.max(n, m)), Math.abs(n - m) + 2);
  for (let i = 0; i <= loose; i++) costs[i * row] = 0;
  for (let j = 0; j <= loose; j++) costs[j] = 0;
  let apart = Infinity;
  let end = 0;
  for (let i = 1; i <= n; i++) {
    const middle = Math.round((i * m) / n);
    for (let j = Math.max(1, middle - reach); j <= Math.min(m, middle + reach); j++) {
      const at = i * row + j;
      const distance = apartAt(a, i - 1, b, j - 1);
      local[at] = distance;
      const diagonal = costs[at - row - 1]! + 2 * distance;
      const down = costs[at - row]! + distance;
      const along = costs[at - 1]! + distance;
      if (diagonal <= down && diagonal <= along) {
        costs[at] = diagonal;
        weights[at] = weights[at - row - 1]! + 2;
        steps[at] = DIAGONAL;
      } else if (down <= along) {
        costs[at] = down;
        weights[at] = weights[at - row]! + 1;
        steps[at] = DOWN;
      } else {
        costs[at] = along;
        weights[at] = weights[at - 1]! + 1;
        steps[at] = ALONG;
      }
      if ((j === m && i >= n - loose) || (i === n && j >= m - loose)) {
        const mean = costs[at]! / Math.max(weights[at]!, 0.6 * (n + m));
        if (mean < apart) [apart, end] = [mean, at];
      }
    }
  }
  return { apart, ...traced(end, row, n) };
}

function apartAt(a: Cepstra, i: number, b: Cepstra, j: number): number {
  let sum = 0;
  const [from, to] = [i * a.width, j * b.width];
  for (let k = 0; k < a.width; k++) {
    const difference = a.values[from + k]! - b.values[to + k]!;
    sum += difference * difference;
  }
  return Math.sqrt(sum);
}

function traced(end: number, row: number, rows: number): Omit<Alignment, 'apart'> {
  const way: number[] = [];
  const along = new Float32Array(rows).fill(Infinity);
  let still = 0;
  for (let at = end; steps[at] !== 0;) {
    const i = Math.floor(at / row) - 1;
    way.push(at - row - 1 - i);
    along[i] = Math.min(along[i]!, local[at]!);
    const step = steps[at]!;
    if (step !== DIAGONAL) still++;
    at -= step === DIAGONAL ? row + 1 : step === DOWN ? row : 1;
  }
  return { warped: still / Math.max(1, way.length), way, along };
}
