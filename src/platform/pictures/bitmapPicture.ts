// A decoded picture as the measurements read it. Most of its pixels are never looked at, so they stay in the bitmap: reduced ones are drawn
// small, and its own are brought out in tiles, where something is measured. Their plane takes memory only where it is written.
import { turnOf } from '../../kit/photograph/orientation.ts';
import type { PixelBox, PixelSource } from '../../photographs/pixelSource.ts';
import { planeOf, type Plane } from '../../photographs/plane.ts';

/** Pixels of a tile each way, and of what is brought out at once: 2 MB of them. */
const TILE = 256;
const MOST_TILES = 8;
/** Drawn smaller at once: where a browser takes the mean of four pixels however small it draws, so many are left out that no mark is lost. */
const FIRST_FACTOR = 4;

/** `orientation` as Exif counts it, from 1 to 8. Its functions throw where there is no room for a canvas. */
export function bitmapPicture(bitmap: ImageBitmap, orientation: number): PixelSource {
  const { matrix, frame } = turnOf(orientation, bitmap);
  const { width, height } = frame;
  const [a, b, c, d, e, f] = matrix;
  const [columns, rows] = [Math.ceil(width / TILE), Math.ceil(height / TILE)];
  const there = new Uint8Array(columns * rows);
  const whole: Plane = { width, height, light: new Float32Array(width * height) };
  let window: OffscreenCanvasRenderingContext2D | null = null;

  /** Some tiles of one row. */
  function bring(row: number, from: number, end: number): void {
    window ??= contextOf(TILE * MOST_TILES, TILE);
    const [left, top] = [from * TILE, row * TILE];
    const [across, down] = [Math.min(width, end * TILE) - left, Math.min(height, top + TILE) - top];
    // Where the picture is transparent, what was drawn before would show.
    window.setTransform(1, 0, 0, 1, 0, 0);
    window.clearRect(0, 0, TILE * MOST_TILES, TILE);
    window.setTransform(a, b, c, d, e - left, f - top);
    window.drawImage(bitmap, 0, 0);
    const { light } = planeOf(window.getImageData(0, 0, across, down).data, across, down);
    for (let y = 0; y < down; y++) whole.light.set(light.subarray(y * across, (y + 1) * across), (top + y) * width + left);
    there.fill(1, row * columns + from, row * columns + end);
  }

  function around({ left, top, right, bottom }: PixelBox): Plane {
    const tile = (place: number, count: number): number => Math.max(0, Math.min(count - 1, Math.floor(place / TILE)));
    const last = tile(right, columns);
    for (let row = tile(top, rows); row <= tile(bottom, rows); row++) {
      for (let from = tile(left, columns); from <= last; from++) {
        let end = from;
        while (end <= last && end - from < MOST_TILES && there[row * columns + end] === 0) end++;
        if (end === from) continue;
        bring(row, from, end);
        from = end - 1;
      }
    }
    return whole;
  }

  function reduced(factor: number): Plane {
    if (factor === 1) return around({ left: 0, top: 0, right: width, bottom: height });
    const first = Math.min(factor, FIRST_FACTOR);
    let [across, down] = [Math.floor(width / first), Math.floor(height / first)];
    let small = contextOf(across, down);
    small.imageSmoothingQuality = 'medium';
    small.setTransform(a / first, b / first, c / first, d / first, e / first, f / first);
    small.drawImage(bitmap, 0, 0);
    // Between four pixels, the plainest way of drawing is their mean.
    for (let left = factor / first; left > 1; left /= 2) {
      const before = small.canvas;
      [across, down] = [Math.floor(across / 2), Math.floor(down / 2)];
      small = contextOf(across, down);
      small.setTransform(0.5, 0, 0, 0.5, 0, 0);
      small.drawImage(before, 0, 0);
    }
    return planeOf(small.getImageData(0, 0, across, down).data, across, down);
  }

  return { width, height, reduced, around };
}

/** Kept where the processor reads it: its pixels are read right after they are drawn. Throws where there is no room. */
export function contextOf(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true, alpha: false });
  if (context === null) throw new Error('There is no room for a canvas.');
  context.imageSmoothingQuality = 'low';
  return context;
}
