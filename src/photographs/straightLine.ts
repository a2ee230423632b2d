// A straight line through points by weighted least squares, with what is known of its two numbers (P. R. Bevington, D. K. Robinson, Data
// Reduction and Error Analysis, 3rd ed. 2003, ch. 6).

export interface LinePoint {
  readonly x: number;
  readonly y: number;
  /** One over a variance, to a common factor. */
  readonly weight: number;
}

export interface StraightLine {
  /** y = intercept + slope · x */
  readonly intercept: number;
  readonly slope: number;
  /** Their variances and covariance where a point of weight 1 has a variance of 1. */
  readonly unit: { readonly intercept: number; readonly slope: number; readonly both: number };
}

/** Null where all points stand at one x. */
export function straightLine(points: readonly LinePoint[]): StraightLine | null {
  const sum = (of: (point: LinePoint) => number) => points.reduce((total, point) => total + point.weight * of(point), 0);
  const weight = sum(() => 1);
  const [middleX, middleY] = [sum(({ x }) => x) / weight, sum(({ y }) => y) / weight];
  const squares = sum(({ x }) => (x - middleX) ** 2);
  if (!(squares > 1e-12 * (1 + middleX ** 2) * weight)) return null;
  const slope = sum(({ x, y }) => (x - middleX) * (y - middleY)) / squares;
  return {
    intercept: middleY - slope * middleX,
    slope,
    unit: { intercept: 1 / weight + middleX ** 2 / squares, slope: 1 / squares, both: -middleX / squares },
  };
}
