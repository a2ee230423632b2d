// How much of each pixel a polygon covers, exactly: every side adds its signed area to the row it crosses, and a running sum along
// the row gives the coverage (the accumulation buffer of font rendering, common practice). Shapes that touch add up without a seam.

export interface Grid {
  readonly width: number;
  readonly height: number;
}

/** Adds one polygon, in pixels of the grid; one number more than the width a row. */
export function addPolygon(sums: Float32Array, grid: Grid, corners: readonly { x: number; y: number }[]): void {
  let twice = 0;
  for (const [index, a] of corners.entries()) {
    const b = corners[(index + 1) % corners.length]!;
    twice += a.x * b.y - b.x * a.y;
  }
  const sense = twice < 0 ? -1 : 1;
  for (const [index, a] of corners.entries()) addSide(sums, grid, a, corners[(index + 1) % corners.length]!, sense);
}

function addSide(sums: Float32Array, { width, height }: Grid, from: { x: number; y: number }, to: { x: number; y: number }, sense: number): void {
  if (from.y === to.y) return;
  const downwards = from.y < to.y;
  const [upper, lower] = downwards ? [from, to] : [to, from];
  const sign = downwards ? -sense : sense;
  const slope = (lower.x - upper.x) / (lower.y - upper.y);
  const first = Math.max(0, Math.floor(upper.y));
  const last = Math.min(height - 1, Math.ceil(lower.y) - 1);
  for (let row = first; row <= last; row += 1) {
    const top = Math.max(row, upper.y);
    const bottom = Math.min(row + 1, lower.y);
    const clamped = (y: number) => Math.min(width, Math.max(0, upper.x + (y - upper.y) * slope));
    addPiece(sums, row * (width + 1), clamped(top), clamped(bottom), sign * (bottom - top), width);
  }
}

/** A piece of a side within one row: everything right of it is covered by its height. */
function addPiece(sums: Float32Array, row: number, one: number, other: number, height: number, width: number): void {
  const [left, right] = one < other ? [one, other] : [other, one];
  const first = Math.min(width - 1, Math.floor(left));
  const last = Math.min(width - 1, Math.max(first, Math.ceil(right) - 1));
  if (first === last) {
    const share = first + 1 - (left + right) / 2;
    sums[row + first]! += height * share;
    sums[row + first + 1]! += height * (1 - share);
    return;
  }
  const each = height / (right - left);
  // The area right of the piece within a pixel, less what the pixels before it have had already.
  let had = 0;
  for (let pixel = first; pixel <= last; pixel += 1) {
    const start = Math.max(left, pixel);
    const end = Math.min(right, pixel + 1);
    const crossed = each * (start - left);
    const covered = crossed + each * (end - start) * (pixel + 1 - (start + end) / 2);
    sums[row + pixel]! += covered - had;
    had = covered;
  }
  sums[row + last + 1]! += height - had;
}

/** Coverage of each pixel between 0 and 1, and the sums emptied for the next shapes. */
export function takeCoverage(sums: Float32Array, { width, height }: Grid, paint: (pixel: number, coverage: number) => void): void {
  for (let row = 0; row < height; row += 1) {
    let running = 0;
    const start = row * (width + 1);
    for (let column = 0; column < width; column += 1) {
      running += sums[start + column]!;
      if (running > 1e-4) paint(row * width + column, Math.min(1, running));
    }
  }
  sums.fill(0);
}
