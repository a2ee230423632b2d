// Blur that changes with depth: each cell is the mean over the disc that its own depth asks for. The disc is cut into level slices,
// each a difference of two running sums; discs come in steps of a twentieth of a cell.

const LEVEL = 20;

/** `disc` tells the diameter in cells of a cell; the result has the same size. */
export function defocus(light: Float32Array, width: number, height: number, disc: (x: number, y: number) => number): Float32Array {
  const stride = width + 1;
  const sums = new Float64Array(stride * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) sums[y * stride + x + 1] = sums[y * stride + x]! + light[y * width + x]!;
  }
  const out = new Float32Array(light.length);
  const kernels = new Map<number, Slice[]>();
  for (let y = 0; y < height; y += 1) {
    let start = 0;
    let level = Math.round(disc(0.5, y + 0.5) * LEVEL);
    for (let x = 1; x <= width; x += 1) {
      // Depth changes slowly along a row: it is asked for every fourth cell.
      if (x < width && x % 4 !== 0) continue;
      const next = x < width ? Math.round(disc(x + 0.5, y + 0.5) * LEVEL) : -1;
      if (next === level) continue;
      let kernel = kernels.get(level);
      if (kernel === undefined) kernels.set(level, (kernel = slicesOf(level / LEVEL)));
      blurRun(light, sums, out, width, height, y, start, x, kernel);
      start = x;
      level = next;
    }
  }
  return out;
}

/** One row of the disc: how far it reaches to either side, in cells, and its share of the whole for each cell of length. */
interface Slice {
  readonly row: number;
  readonly half: number;
  readonly weight: number;
}

function slicesOf(diameter: number): Slice[] {
  const radius = diameter / 2;
  if (radius < 0.3) return [];
  const slices: { row: number; half: number }[] = [];
  const reach = Math.ceil(radius - 0.5);
  for (let row = -reach; row <= reach; row += 1) {
    // Mean half width over the cell's height, by the midpoints of eight parts.
    let half = 0;
    for (let part = 0; part < 8; part += 1) half += Math.sqrt(Math.max(0, radius ** 2 - (row - 0.5 + (part + 0.5) / 8) ** 2)) / 8;
    if (half > 0) slices.push({ row, half });
  }
  const area = slices.reduce((sum, { half }) => sum + 2 * half, 0);
  return slices.map(({ row, half }) => ({ row, half, weight: 1 / area }));
}

function blurRun(
  light: Float32Array,
  sums: Float64Array,
  out: Float32Array,
  width: number,
  height: number,
  y: number,
  from: number,
  to: number,
  kernel: readonly Slice[],
): void {
  const stride = width + 1;
  if (kernel.length === 0) {
    for (let x = from; x < to; x += 1) out[y * width + x] = light[y * width + x]!;
    return;
  }
  for (const { row, half, weight } of kernel) {
    const start = Math.min(height - 1, Math.max(0, y + row)) * stride;
    const ahead = 0.5 + half;
    const whole = Math.floor(ahead);
    const part = ahead - whole;
    for (let x = from; x < to; x += 1) {
      const right = Math.min(width - 1, x + whole);
      const left = Math.max(0, x + 1 - whole - 1);
      const high = sums[start + right]! + part * (sums[start + right + 1]! - sums[start + right]!);
      // Mirror of the right end about the cell's middle.
      const low = sums[start + left + 1]! - part * (sums[start + left + 1]! - sums[start + left]!);
      out[y * width + x]! += (high - low) * weight;
    }
  }
}
