// The normal curve's sum that fits the pixels beside a straight edge, by the method of Levenberg and Marquardt (D. W. Marquardt, J. SIAM 11(2), 1963).
import { solveLinear } from './linearSystem.ts';
import { normalBelow, normalHeight } from './normalCurve.ts';

/** Pixels of a piece: how far along it, from -1 to 1, how far across it, in pixels, and their light. */
export interface EdgeSamples {
  readonly count: number;
  readonly along: Float64Array;
  readonly across: Float64Array;
  readonly light: Float64Array;
}

/** Darker side, contrast, shift, logarithm of the spread, and how the shift changes towards the piece's end. */
export type NormalSum = readonly [number, number, number, number, number];
const COUNT = 5;

/** Null where the samples do not settle it; `uncertain` is the standard deviation of the logarithm of the spread. */
export function fitNormalSum(samples: EdgeSamples, start: NormalSum): { parameters: NormalSum; uncertain: number } | null {
  let now = start;
  let normal = normalEquations(samples, now);
  let damping = 1e-2;
  for (let turn = 0; turn < 40; turn += 1) {
    const step = solveLinear(
      normal.matrix.map((row, index) => row.map((entry, column) => (column === index ? entry * (1 + damping) + 1e-12 : entry))),
      normal.right,
    );
    if (step === null) return null;
    const tried = now.map((value, index) => value + step[index]!) as unknown as NormalSum;
    const next = normalEquations(samples, tried);
    if (next.squares < normal.squares) {
      const done = normal.squares - next.squares < 1e-7 * normal.squares;
      [now, normal, damping] = [tried, next, damping / 8];
      if (done) break;
    } else {
      damping *= 8;
      if (damping > 1e8) break;
    }
  }
  const unit = solveLinear(normal.matrix, [0, 0, 0, 1, 0]);
  if (unit === null || !(unit[3]! > 0)) return null;
  return { parameters: now, uncertain: Math.sqrt((unit[3]! * normal.squares) / (samples.count - COUNT)) };
}

/** Written out, as it is reckoned for every pixel beside every edge of the ramp, some ten times. */
function normalEquations({ count, along, across, light }: EdgeSamples, [dark, contrast, shift, logSpread, turn]: NormalSum) {
  const spread = Math.exp(logSpread);
  // The first parameter's slope is 1 everywhere: its products with the others are their sums.
  let [s1, s2, s3, s4, s11, s12, s13, s14, s22, s23, s24, s33, s34, s44] = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0];
  let [r0, r1, r2, r3, r4, squares] = [0, 0, 0, 0, 0, 0];
  for (let at = 0; at < count; at += 1) {
    const place = along[at]!;
    const z = (across[at]! - shift - turn * place) / spread;
    const height = normalHeight(z);
    const share = normalBelow(z, height);
    const byShift = (-contrast * height) / spread;
    const bySpread = -contrast * height * z;
    const byTurn = byShift * place;
    const rest = light[at]! - dark - contrast * share;
    squares += rest * rest;
    r0 += rest;
    s1 += share;
    r1 += share * rest;
    s11 += share * share;
    s12 += share * byShift;
    s13 += share * bySpread;
    s14 += share * byTurn;
    s2 += byShift;
    r2 += byShift * rest;
    s22 += byShift * byShift;
    s23 += byShift * bySpread;
    s24 += byShift * byTurn;
    s3 += bySpread;
    r3 += bySpread * rest;
    s33 += bySpread * bySpread;
    s34 += bySpread * byTurn;
    s4 += byTurn;
    r4 += byTurn * rest;
    s44 += byTurn * byTurn;
  }
  const matrix = [
    [count, s1, s2, s3, s4],
    [s1, s11, s12, s13, s14],
    [s2, s12, s22, s23, s24],
    [s3, s13, s23, s33, s34],
    [s4, s14, s24, s34, s44],
  ];
  return { matrix, right: [r0, r1, r2, r3, r4], squares };
}
