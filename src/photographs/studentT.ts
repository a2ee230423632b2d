// Student's t: how far out a mean of few values may lie by chance. The share below comes from the continued fraction of the
// incomplete beta function (W. H. Press et al., Numerical Recipes, 3rd ed. 2007, 6.4; modified Lentz), the quantile by halving.
import { normalBelow } from './normalCurve.ts';

/** The value that a share of all t with these degrees of freedom (1 or more) lies below; the share lies between 0 and 1, ends left out. */
export function studentQuantile(share: number, freedom: number): number {
  if (share < 0.5) return -studentQuantile(1 - share, freedom);
  let [low, high] = [0, 2];
  while (studentBelow(high, freedom) < share && high < 1e9) high *= 2;
  for (let turn = 0; turn < 80; turn += 1) {
    const middle = (low + high) / 2;
    if (studentBelow(middle, freedom) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Share of all t with these degrees of freedom below `t`. */
export function studentBelow(t: number, freedom: number): number {
  if (freedom > 1e6) return normalBelow(t);
  const tail = incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  return t < 0 ? tail : 1 - tail;
}

/** Regularised, I_x(a, b). */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(1 - x, b, a)) / b;
}

function fraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const away = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let sum = d;
  for (let m = 1; m < 300; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    sum *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    sum *= d * c;
    if (Math.abs(d * c - 1) < 1e-14) break;
  }
  return sum;
}

/** Lanczos' series (C. Lanczos, SIAM J. Numer. Anal. B 1, 1964) with the coefficients of g = 7, n = 9 (P. Godfrey, 2001, from memory). */
function logGamma(x: number): number {
  const rest = [
    676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
    1.5056327351493116e-7,
  ];
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  const sum = rest.reduce((total, coefficient, index) => total + coefficient / (z + index + 1), 0.99999999999980993);
  const t = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}
