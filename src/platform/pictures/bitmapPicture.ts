// A decoded picture as the measurements read it. Most of its pixels are never looked at, so they stay in the bitmap: reduced ones are drawn
// small, and its own are brought out in tiles, where something is measured. Their plane takes memory only where it is written.
import { turnOf } from '../../kit/photograph/orientation.ts';
import type { PixelBox, PixelSource } from '../../photographs/pixelSource.ts';
import { planeOf, writeLight, type Plane } from '../../photographs/plane.ts';
import { contextOf, type DrawnSmaller } from './drawnSmaller.ts';

/** Pixels of a tile each way, and of what is brought out at once: 2 MB of them. */
const TILE = 256;
const MOST_TILES = 8;

/** `orientation` as Exif counts it, from 1 to 8. Its functions throw where there is no room for a canvas. */
export function bitmapPicture(bitmap: ImageBitmap, orientation: number, smaller: DrawnSmaller): PixelSource {
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
    writeLight(whole, { left, top, width: across, height: down }, window.getImageData(0, 0, across, down).data);
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
    const small = smaller.by(factor);
    const { width: across, height: down } = small.canvas;
    return planeOf(small.getImageData(0, 0, across, down).data, across, down);
  }

  return { width, height, reduced, around };
}
