// A picture as the practice camera takes it: prints, a rig and a lens in, the bytes of a picture and the truth about it out.
import { seededRandom } from '../random.ts';
import { defocus } from './depthBlur.ts';
import { developedBytes } from './developed.ts';
import { exposeMosaic } from './mosaicSensor.ts';
import { project, projectionOf, type Mounted, type Projection } from './mounted.ts';
import { paintScene, WALL, type Seen, type SceneWindow } from './scene.ts';
import type { Shot } from './shot.ts';
import { binned, gaussianBlur, shaken } from './smooth.ts';
import { diffraction, discAt } from './thinLens.ts';

export interface TakenPicture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
  /** From each sheet's millimetres to pixels, in the order they were given. */
  readonly projections: readonly Projection[];
}

/** Cells to a pixel's side before the sensor. */
const FINE = 2;

export function takePicture(sheets: readonly Mounted[], shot: Shot, seed: number): TakenPicture {
  const { sensor, development } = shot;
  const { width, height } = sensor;
  const random = seededRandom(seed);
  const seen = sheets.map((sheet) => ({ sheet, projection: projectionOf(sheet, shot) }));
  const light = new Float32Array(width * height).fill(WALL * development.exposure);
  const window = windowOf(seen, shot);
  if (window !== null) {
    const projected = blurred(seen, window, shot);
    const [columns, margin] = [window.width / FINE, marginOf(seen, shot)];
    for (let y = margin; y < window.height / FINE - margin; y += 1) {
      const row = y + window.top;
      if (row < 0 || row >= height) continue;
      for (let x = margin; x < columns - margin; x += 1) {
        const column = x + window.left;
        if (column >= 0 && column < width) light[row * width + column] = projected[y * columns + x]! * development.exposure;
      }
    }
  }
  const rgba = developedBytes(exposeMosaic(light, sensor, random), width, height, development.sharpening);
  return {
    width,
    height,
    rgba,
    projections: seen.map(({ projection }) => projection),
  };
}

/** The scene as the lens draws it, pixel by pixel of the window. */
function blurred(seen: readonly Seen[], window: SceneWindow, { lens, sensor, motion }: Shot): Float32Array {
  const depths = seen.map(depthIn);
  const cells = FINE / sensor.pitch;
  const disc = (x: number, y: number): number => {
    const [column, row] = [window.left + x / FINE, window.top + y / FINE];
    // What lies on no print has the first print's depth.
    const on = depths.findLast(({ holds }) => holds(column, row)) ?? depths[0]!;
    return discAt(lens, on.depth(column, row)) * cells;
  };
  const soft = defocus(paintScene(seen, window), window.width, window.height, disc);
  const smooth = gaussianBlur(soft, window.width, window.height, FINE * Math.hypot(lens.aberration, diffraction(lens) / sensor.pitch));
  const moved = shaken(smooth, window.width, window.height, { x: motion.x * FINE, y: motion.y * FINE });
  return binned(moved, window.width, window.height, FINE);
}

/** The distance from the lens of what a pixel sees on the sheet's plane, and whether that lies on the sheet. */
function depthIn({ sheet: { drawing }, projection: [a, b, c, d, e, f, g, h, i] }: Seen) {
  // Rows of the adjugate: from a pixel back to millimetres.
  const back = [e * i - f * h, c * h - b * i, b * f - c * e, f * g - d * i, a * i - c * g, c * d - a * f, d * h - e * g, b * g - a * h, a * e - b * d] as const;
  const on = (x: number, y: number) => {
    const w = back[6] * x + back[7] * y + back[8];
    return { x: (back[0] * x + back[1] * y + back[2]) / w, y: (back[3] * x + back[4] * y + back[5]) / w };
  };
  return {
    holds: (x: number, y: number): boolean => {
      const at = on(x, y);
      return at.x >= 0 && at.y >= 0 && at.x <= drawing.width && at.y <= drawing.height;
    },
    depth: (x: number, y: number): number => {
      const at = on(x, y);
      return g * at.x + h * at.y + i;
    },
  };
}

const cornersOf = ({ sheet: { drawing }, projection }: Seen) =>
  [
    [0, 0],
    [drawing.width, 0],
    [drawing.width, drawing.height],
    [0, drawing.height],
  ].map(([x, y]) => project(projection, x!, y!));

/** Pixels beyond the prints that blur may reach. */
function marginOf(seen: readonly Seen[], { lens, sensor, motion }: Shot): number {
  const widest = Math.max(...seen.flatMap(cornersOf).map(({ z }) => discAt(lens, z) / sensor.pitch));
  return Math.ceil(widest / 2 + 4 * Math.hypot(lens.aberration, 1) + Math.abs(motion.x) + Math.abs(motion.y)) + 2;
}

function windowOf(seen: readonly Seen[], shot: Shot): SceneWindow | null {
  if (seen.length === 0) return null;
  const corners = seen.flatMap(cornersOf);
  const pad = 2 * marginOf(seen, shot);
  const { width, height } = shot.sensor;
  const clamp = (value: number, most: number) => Math.min(most + pad, Math.max(-pad, value));
  const left = Math.floor(clamp(Math.min(...corners.map(({ x }) => x)) - pad, width));
  const right = Math.ceil(clamp(Math.max(...corners.map(({ x }) => x)) + pad, width));
  const top = Math.floor(clamp(Math.min(...corners.map(({ y }) => y)) - pad, height));
  const bottom = Math.ceil(clamp(Math.max(...corners.map(({ y }) => y)) + pad, height));
  return right <= left || bottom <= top ? null : { left, top, width: (right - left) * FINE, height: (bottom - top) * FINE, fine: FINE };
}
