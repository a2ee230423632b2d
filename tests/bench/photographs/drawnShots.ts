// The pictures of the family, drawn by chance over what photographers use: focal length, aperture, distance, how square the camera stands,
// how large the target comes out, noise, sharpening and the quality of the file.
import type { KeptShot } from '../../photographs/camera/photograph.ts';
import type { Random } from '../../../src/practice/random.ts';
import { SQUARE } from '../../../src/practice/pictures/shot.ts';
import { rigFor, type Rig } from '../../photographs/camera/rig.ts';
import { project, projectionOf } from '../../../src/practice/pictures/mounted.ts';

export interface DrawnShot {
  readonly rig: Rig;
  readonly shot: KeptShot;
  /** Height of the target's field with its marks over the picture's. */
  readonly share: number;
}

const APERTURES = [1.4, 1.8, 2, 2.8, 4, 5.6];
/** A window from the middle of a full-size picture, so that many can be rendered. */
const WIDTH = 1600;
const HEIGHT = 2000;

/** The target fills 8 to 60 % of the height; what does not fit with its ramp is drawn again. */
export function drawShot(random: Random): DrawnShot {
  for (;;) {
    const drawn = tryShot(random);
    if (drawn !== null) return drawn;
  }
}

function tryShot(random: Random): DrawnShot | null {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const focalLength = 24 * (300 / 24) ** random();
  const lens = {
    focalLength,
    aperture: APERTURES[Math.floor(random() * APERTURES.length)]!,
    distance: focalLength * between(22, 60),
    focusError: 0,
    aberration: between(0.4, 0.7),
  };
  const sensor = { width: WIDTH, height: HEIGHT, pitch: between(0.004, 0.0065), fullWell: random() < 0.5 ? 40_000 : 4000, readNoise: 5 };
  const rig = rigFor({ lens, sensor }, between(0.6, 4.5));
  const scale = lens.focalLength / (lens.distance - lens.focalLength) / sensor.pitch;
  const { field, square, gap } = rig.target.measure;
  const share = ((field + 2 * (square + gap)) * scale) / HEIGHT;
  if (share < 0.08 || share > 0.6) return null;
  const shot: KeptShot = {
    pose: { ...SQUARE, lean: between(-8, 8), swing: between(-8, 8), roll: between(-5, 5) },
    lens,
    sensor,
    development: { exposure: between(0.5, 0.95), sharpening: random() < 0.5 ? 0 : between(0.2, 0.6), jpeg: Math.round(between(80, 98)) },
    motion: { x: 0, y: 0 },
  };
  const framed = inFrame(rig, shot);
  return framed === null ? null : { rig, shot: { ...framed, lens: { ...lens, focusError: focusOnRamp(rig, framed, between) } }, share };
}

/** Focus falls on the ramp, as it stands in this picture, and within the depth of field or a little beyond: the rest is a fault, which has a test of its own. */
function focusOnRamp({ sheets, ramp, depth }: Rig, shot: KeptShot, between: (low: number, high: number) => number): number {
  const projection = projectionOf(sheets[1], shot);
  const { zero, half } = ramp.layout;
  const [behind, front] = [zero - 0.85 * half, zero + 0.85 * half].map((y) => project(projection, sheets[1].drawing.width / 2, y).z - shot.lens.distance) as [
    number,
    number,
  ];
  const most = depth.total === 'infinite' ? Infinity : 0.6 * depth.total;
  return between(Math.max(front, -most), Math.min(behind, most));
}

/** Moved so that what must be seen lies about the middle of the picture; null where it does not fit. */
function inFrame({ sheets, target }: Rig, shot: KeptShot): KeptShot | null {
  const at = (pose: KeptShot['pose']) => {
    const [flat, ramp] = sheets.map((sheet) => projectionOf(sheet, { ...shot, pose })) as [ReturnType<typeof projectionOf>, ReturnType<typeof projectionOf>];
    const { field, square, gap } = target.measure;
    const [half, tall] = [field / 2, field / 2 + gap + square];
    const onFlat = [-1, 1].flatMap((x) => [-1, 1].map((y) => project(flat, target.middle.x + x * half, target.middle.y + y * tall)));
    const { drawing } = sheets[1];
    const onRamp = [0, drawing.width].flatMap((x) => [0, drawing.height].map((y) => project(ramp, x, y)));
    const seen = [...onFlat, ...onRamp];
    const [xs, ys] = [seen.map(({ x }) => x), seen.map(({ y }) => y)];
    return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  };
  const first = at(shot.pose);
  const millimetre = (shot.sensor.pitch * (shot.lens.distance - shot.lens.focalLength)) / shot.lens.focalLength;
  const pose = {
    ...shot.pose,
    right: ((shot.sensor.width - first.left - first.right) / 2) * millimetre,
    down: ((shot.sensor.height - first.top - first.bottom) / 2) * millimetre,
  };
  const { left, right, top, bottom } = at(pose);
  return left < 20 || top < 20 || right > shot.sensor.width - 20 || bottom > shot.sensor.height - 20 ? null : { ...shot, pose };
}
