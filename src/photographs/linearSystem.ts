// Small systems of linear equations, by elimination with the largest pivot (common practice).

/** The x of A x = b for a square A, row by row; null where the rows say the same thing twice. Leaves its arguments as they are. */
export function solveLinear(rows: readonly (readonly number[])[], right: readonly number[]): number[] | null {
  const size = right.length;
  const work = rows.map((row, index) => [...row, right[index]!]);
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < size; row += 1) if (Math.abs(work[row]![column]!) > Math.abs(work[pivot]![column]!)) pivot = row;
    const first = work[pivot]!;
    if (!(Math.abs(first[column]!) > 1e-12 * greatestOf(rows[column]!))) return null;
    [work[column], work[pivot]] = [first, work[column]!];
    for (let row = 0; row < size; row += 1) {
      if (row === column) continue;
      const factor = work[row]![column]! / first[column]!;
      for (let at = column; at <= size; at += 1) work[row]![at]! -= factor * first[at]!;
    }
  }
  return work.map((row, index) => row[size]! / row[index]!);
}

function greatestOf(row: readonly number[]): number {
  let greatest = 0;
  for (const entry of row) greatest = Math.max(greatest, Math.abs(entry));
  return greatest;
}
