// Dark spots on a lighter ground: pixels that are clearly darker than the mean of their surroundings (an adaptive threshold over
// a running sum: F. C. Crow, Summed-Area Tables, SIGGRAPH 1984; its use for thresholds: D. Bradley & G. Roth, J. Graphics Tools
// 12(2):13, 2007), gathered into connected spots. Uneven light moves the mean along with it.
import type { Point } from '../optics/print/drawing.ts';
import type { Plane } from './plane.ts';

export interface Spot {
  /** Pixels it has. */
  readonly area: number;
  /** Left and right ends of each of its rows, in pixels. */
  readonly outline: readonly Point[];
}

/** Surroundings reach so many pixels to each side: enough to hold the widest mark with white beside it. */
const AROUND = 28;
/** Darker than this share of the mean. Low, so that the white between a mark and the bars stays open when it is blurred. */
const SHARE = 0.7;

/** All spots that fit between two sizes of their box, in pixels. */
export function darkSpots(plane: Plane, least: number, most: number): Spot[] {
  const { width, height } = plane;
  const dark = darkPixels(plane);
  const queue = new Int32Array(width * height);
  const spots: Spot[] = [];
  for (let seed = 0; seed < dark.length; seed++) {
    if (dark[seed] === 0) continue;
    const end = gather(dark, queue, seed, width);
    if (end < (least * least) / 3) continue;
    const spot = spotOf(queue, end, plane, least, most);
    if (spot) spots.push(spot);
  }
  return spots;
}

/** Clears a spot and lists its pixels; returns how many. */
function gather(dark: Uint8Array, queue: Int32Array, seed: number, width: number): number {
  dark[seed] = 0;
  queue[0] = seed;
  let end = 1;
  for (let next = 0; next < end; next++) {
    const pixel = queue[next]!;
    const column = pixel % width;
    if (column > 0 && dark[pixel - 1] === 1) {
      dark[pixel - 1] = 0;
      queue[end++] = pixel - 1;
    }
    if (column < width - 1 && dark[pixel + 1] === 1) {
      dark[pixel + 1] = 0;
      queue[end++] = pixel + 1;
    }
    if (pixel >= width && dark[pixel - width] === 1) {
      dark[pixel - width] = 0;
      queue[end++] = pixel - width;
    }
    if (pixel + width < dark.length && dark[pixel + width] === 1) {
      dark[pixel + width] = 0;
      queue[end++] = pixel + width;
    }
  }
  return end;
}

/** Null where its box is too small or large, or touches the border: what goes on outside is not known. */
function spotOf(queue: Int32Array, area: number, { width, height }: Plane, least: number, most: number): Spot | null {
  let top = height;
  let bottom = -1;
  for (let index = 0; index < area; index++) {
    const row = Math.floor(queue[index]! / width);
    if (row < top) top = row;
    if (row > bottom) bottom = row;
  }
  const rows = bottom - top + 1;
  if (rows < least || rows > most || top === 0 || bottom === height - 1) return null;
  const ends = Array.from({ length: rows }, () => ({ left: width, right: -1 }));
  for (let index = 0; index < area; index++) {
    const pixel = queue[index]!;
    const end = ends[Math.floor(pixel / width) - top]!;
    end.left = Math.min(end.left, pixel % width);
    end.right = Math.max(end.right, pixel % width);
  }
  const left = Math.min(...ends.map((end) => end.left));
  const right = Math.max(...ends.map((end) => end.right));
  if (right - left + 1 < least || right - left + 1 > most || left === 0 || right === width - 1) return null;
  return {
    area,
    outline: ends.flatMap((end, row) => [
      { x: end.left, y: top + row + 0.5 },
      { x: end.right + 1, y: top + row + 0.5 },
    ]),
  };
}

function darkPixels({ width, height, light }: Plane): Uint8Array {
  const dark = new Uint8Array(width * height);
  // Sums of the columns over the rows around, moved down row by row: no table as large as the picture.
  const columns = new Float64Array(width);
  const sums = new Float64Array(width + 1);
  for (let y = 0; y < Math.min(height, AROUND); y++) addRow(columns, light, y * width, 1);
  for (let y = 0; y < height; y++) {
    if (y + AROUND < height) addRow(columns, light, (y + AROUND) * width, 1);
    if (y - AROUND - 1 >= 0) addRow(columns, light, (y - AROUND - 1) * width, -1);
    let sum = 0;
    for (let x = 0; x < width; x++) sums[x + 1] = sum += columns[x]!;
    const rows = Math.min(height - 1, y + AROUND) - Math.max(0, y - AROUND) + 1;
    const start = y * width;
    for (let x = 0; x < width; x++) {
      const from = x > AROUND ? x - AROUND : 0;
      const to = x + AROUND + 1 < width ? x + AROUND + 1 : width;
      if (light[start + x]! * (to - from) * rows < SHARE * (sums[to]! - sums[from]!)) dark[start + x] = 1;
    }
  }
  return dark;
}

function addRow(columns: Float64Array, light: Float32Array, start: number, times: 1 | -1): void {
  for (let x = 0; x < columns.length; x++) columns[x]! += times * light[start + x]!;
}
