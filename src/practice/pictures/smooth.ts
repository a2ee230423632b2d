// Even blurs on a grid: a Gaussian, a straight shake, and the pixel's own square.

/** Separable, cut at four standard deviations. */
export function gaussianBlur(light: Float32Array, width: number, height: number, deviation: number): Float32Array {
  if (deviation < 0.05) return light;
  const reach = Math.ceil(4 * deviation);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, index) => Math.exp(-((index - reach) ** 2) / (2 * deviation ** 2)));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / total);
  return columnPass(rowPass(light, width, height, shares), width, height, shares);
}

/** Along the rows; cells past either end repeat the last one. */
function rowPass(from: Float32Array, width: number, height: number, weights: readonly number[]): Float32Array {
  const to = new Float32Array(from.length);
  const reach = (weights.length - 1) / 2;
  const row = new Float32Array(width + 2 * reach);
  for (let y = 0; y < height; y += 1) {
    const start = y * width;
    row.fill(from[start]!, 0, reach);
    row.set(from.subarray(start, start + width), reach);
    row.fill(from[start + width - 1]!, reach + width);
    for (const [index, weight] of weights.entries()) {
      for (let x = 0; x < width; x += 1) to[start + x]! += weight * row[x + index]!;
    }
  }
  return to;
}

/** Down the columns, row by row, which the memory likes better. */
function columnPass(from: Float32Array, width: number, height: number, weights: readonly number[]): Float32Array {
  const to = new Float32Array(from.length);
  const reach = (weights.length - 1) / 2;
  for (let y = 0; y < height; y += 1) {
    for (const [index, weight] of weights.entries()) {
      const other = Math.min(height - 1, Math.max(0, y + index - reach)) * width;
      for (let x = 0; x < width; x += 1) to[y * width + x]! += weight * from[other + x]!;
    }
  }
  return to;
}

/** The mean along a straight way, as a camera that moves evenly while it exposes. */
export function shaken(light: Float32Array, width: number, height: number, way: { readonly x: number; readonly y: number }): Float32Array {
  const length = Math.hypot(way.x, way.y);
  if (length < 0.1) return light;
  const count = 2 * Math.ceil(length) + 1;
  const to = new Float32Array(light.length);
  for (let part = 0; part < count; part += 1) {
    const share = part / (count - 1) - 0.5;
    const [dx, dy] = [share * way.x, share * way.y];
    const [left, top] = [Math.floor(dx), Math.floor(dy)];
    const [x1, y1] = [dx - left, dy - top];
    for (let y = 0; y < height; y += 1) {
      const rows = [0, 1].map((more) => Math.min(height - 1, Math.max(0, y + top + more)) * width);
      for (let x = 0; x < width; x += 1) {
        const near = Math.min(width - 1, Math.max(0, x + left));
        const far = Math.min(width - 1, Math.max(0, x + left + 1));
        const upper = light[rows[0]! + near]! * (1 - x1) + light[rows[0]! + far]! * x1;
        const lower = light[rows[1]! + near]! * (1 - x1) + light[rows[1]! + far]! * x1;
        to[y * width + x]! += (upper * (1 - y1) + lower * y1) / count;
      }
    }
  }
  return to;
}

/** Mean of `fine` × `fine` cells. */
export function binned(light: Float32Array, width: number, height: number, fine: number): Float32Array {
  const [columns, rows] = [width / fine, height / fine];
  const to = new Float32Array(columns * rows);
  for (let y = 0; y < height; y += 1) {
    const row = Math.floor(y / fine) * columns;
    for (let x = 0; x < width; x += 1) to[row + Math.floor(x / fine)]! += light[y * width + x]! / fine ** 2;
  }
  return to;
}
