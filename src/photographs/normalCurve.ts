// The normal curve: how much of it lies below a point. Rational approximation of the error function, good to 1.5e-7 (M. Abramowitz,
// I. A. Stegun, Handbook of Mathematical Functions, 1964, 7.1.26).

/** Share of a standard normal distribution below `x`; `height` is the curve's there. */
export function normalBelow(x: number, height: number = normalHeight(x)): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * z);
  const tail = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) * height * ROOT;
  return x < 0 ? tail / 2 : 1 - tail / 2;
}

/** Height of the standard normal curve. */
export const normalHeight = (x: number): number => Math.exp((-x * x) / 2) / ROOT;

const ROOT = Math.sqrt(2 * Math.PI);
