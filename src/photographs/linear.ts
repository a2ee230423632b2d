// Least squares by the normal equations and Gauss's elimination with pivots: enough for a few well-conditioned unknowns.

export interface Equation {
  readonly row: readonly number[];
  readonly is: number;
}

/** The unknowns that fit the equations best; null where they do not settle them. */
export function solve(equations: readonly Equation[]): number[] | null {
  const size = equations[0]?.row.length ?? 0;
  const matrix = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size + 1 }, (__, j) => equations.reduce((sum, { row, is }) => sum + row[i]! * (j === size ? is : row[j]!), 0)),
  );
  for (let column = 0; column < size; column++) {
    let pivot = column;
    for (let row = column + 1; row < size; row++) if (Math.abs(matrix[row]![column]!) > Math.abs(matrix[pivot]![column]!)) pivot = row;
    const [own, taken] = [matrix[column]!, matrix[pivot]!];
    if (!(Math.abs(taken[column]!) > 1e-10)) return null;
    [matrix[column], matrix[pivot]] = [taken, own];
    for (let row = 0; row < size; row++) {
      if (row === column) continue;
      const share = matrix[row]![column]! / taken[column]!;
      for (let k = column; k <= size; k++) matrix[row]![k]! -= share * taken[k]!;
    }
  }
  return matrix.map((row, index) => row[size]! / row[index]!);
}
