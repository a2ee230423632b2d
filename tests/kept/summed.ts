// A long row of numbers in a few: its length, its sum, and its sum with weights, so that a number in another place is noticed, too.
export function summed(row: ArrayLike<number>): number[] {
  let [plain, weighted] = [0, 0];
  for (let index = 0; index < row.length; index += 1) {
    const value = row[index] ?? NaN;
    plain += value;
    weighted += value * ((index % 97) + 1);
  }
  return [row.length, plain, weighted];
}
