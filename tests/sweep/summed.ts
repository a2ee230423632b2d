// Long rows of numbers as one: each counts by its place, so that two that change places do not hide each other.

/** The sum of each number times one more than its place, the place counted from 0 to 96 over and over. */
export function summed(values: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += (values[at] ?? 0) * ((at % 97) + 1);
  return sum;
}
