// One number for a long row: each counts by its place, so that two that change places do not hide each other. What is not finite counts
// as a number of its own.
const NOT_FINITE = 1e3;

export const summed = (row: ArrayLike<number>): number =>
  Array.from(row).reduce((sum, value, at) => sum + (Number.isFinite(value) ? value : NOT_FINITE) * ((at % 97) + 1), 0);
