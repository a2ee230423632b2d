// A print in a picture, without the cost of the tests' camera: one blur for all of it, no mosaic, and only the part of the frame
// around the print. Perspective is exact. For the hundreds of pictures that finding is tried on.
import type { Drawing, Point } from '../../../src/optics/print/drawing.ts';
import { planeOf, type Plane } from '../../../src/photographs/plane.ts';
import { normal, seededRandom } from '../../../src/practice/random.ts';
import { defocus } from '../../../src/practice/pictures/depthBlur.ts';
import { mountTarget, project, projectionOf, type Mounted } from '../../../src/practice/pictures/mounted.ts';
import { paintScene } from '../../../src/practice/pictures/scene.ts';
import { gaussianBlur } from '../../../src/practice/pictures/smooth.ts';
import type { Pose } from '../../../src/practice/pictures/shot.ts';
import { USUAL_SHOT } from '../camera/usualShot.ts';

export interface QuickShot {
  readonly focalLength: number;
  readonly distance: number;
  readonly pose: Pose;
  /** Pixels of the whole frame, 36 mm wide. */
  readonly frame: { readonly width: number; readonly height: number };
  /** Diameter of the disc of what is out of focus, in pixels. */
  readonly disc: number;
  /** Standard deviation of noise in white, as a share of it; the light's share at the darker end of the picture; light of white. */
  readonly noise: number;
  readonly fall: number;
  readonly exposure: number;
  /** White round the print that is kept, as a share of its size. */
  readonly around: number;
}

export const USUAL_QUICK: QuickShot = {
  focalLength: 85,
  distance: 85 * 49,
  pose: { lean: 0, swing: 0, roll: 0, right: 0, down: 0 },
  frame: { width: 6000, height: 4000 },
  disc: 1,
  noise: 0.02,
  fall: 0.8,
  exposure: 0.85,
  around: 0.1,
};

export interface QuickPicture {
  readonly plane: Plane;
  /** From millimetres of a print to pixels, print by print. */
  readonly at: (sheet: number, point: Point) => Point;
}

export function quickPicture(sheets: readonly (Drawing | Mounted)[], shot: QuickShot, seed: number): QuickPicture {
  const mounted = sheets.map((sheet) => ('drawing' in sheet ? sheet : mountTarget(sheet)));
  const pitch = 36 / shot.frame.width;
  const lens = { ...USUAL_SHOT.lens, focalLength: shot.focalLength, distance: shot.distance };
  const seen = mounted.map((sheet) => ({
    sheet,
    projection: projectionOf(sheet, { ...USUAL_SHOT, lens, pose: shot.pose, sensor: { ...USUAL_SHOT.sensor, ...shot.frame, pitch } }),
  }));
  const corners = seen.flatMap(({ sheet: { drawing }, projection }) =>
    [0, 1].flatMap((x) => [0, 1].map((y) => project(projection, x * drawing.width, y * drawing.height))),
  );
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const margin = shot.around * Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  const left = Math.floor(Math.max(0, Math.min(...xs) - margin));
  const top = Math.floor(Math.max(0, Math.min(...ys) - margin));
  const width = Math.max(8, Math.ceil(Math.min(shot.frame.width, Math.max(...xs) + margin)) - left);
  const height = Math.max(8, Math.ceil(Math.min(shot.frame.height, Math.max(...ys) + margin)) - top);
  const scene = paintScene(seen, { left, top, width, height, fine: 1 });
  const soft = gaussianBlur(
    defocus(scene, width, height, () => shot.disc),
    width,
    height,
    0.5,
  );
  const random = seededRandom(seed);
  const table = Float32Array.from({ length: 8191 }, () => normal(random, 0, 1));
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let pixel = 0; pixel < soft.length; pixel++) {
    const [x, y] = [pixel % width, Math.floor(pixel / width)];
    const lit = shot.exposure * soft[pixel]! * (1 - (1 - shot.fall) * ((x / width + y / height) / 2));
    const noisy = Math.max(0, lit + shot.noise * Math.sqrt(lit + 0.01) * table[Math.floor(random() * 8191)]!);
    rgba.fill(coded(noisy), 4 * pixel, 4 * pixel + 4);
  }
  return {
    plane: planeOf(rgba, width, height),
    at: (sheet, point) => {
      const { x, y } = project(seen[sheet]!.projection, point.x, point.y);
      return { x: x - left, y: y - top };
    },
  };
}

/** The transfer curve of sRGB: IEC 61966-2-1:1999, 5.2. */
export const coded = (light: number): number => 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.min(1, light) ** (1 / 2.4) - 0.055);
