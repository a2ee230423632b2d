// Linear least squares by the normal equations (G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. 2013, section 5.3): enough
// for a few well-conditioned unknowns.
import { solveLinear } from './linearSystem.ts';

interface Equation {
  readonly row: readonly number[];
  readonly is: number;
}

/** The unknowns that fit the equations best, as many as a row is long; null where they do not settle them. */
export function leastSquares(equations: readonly Equation[]): number[] | null {
  const unknowns = equations[0]?.row.length ?? 0;
  const sum = (of: (equation: Equation) => number): number => equations.reduce((total, equation) => total + of(equation), 0);
  const each = Array.from({ length: unknowns }, (_, index) => index);
  return solveLinear(
    each.map((i) => each.map((j) => sum(({ row }) => row[i]! * row[j]!))),
    each.map((i) => sum(({ row, is }) => row[i]! * is)),
  );
}
