// Contract of pictures that something is wrong with: each says what it is, what can still be told is, and no figure is told that the
// picture does not bear out. They are small, so that they are soon there; prints covered, doubled, too small, of older make or of
// something else are in the contract of finding.
import { describe, expect, test } from 'vitest';
import { fNumber } from '../../src/optics/quantity.ts';
import { TRUE_SIZE, type PrintFactor } from '../../src/optics/print/printCheck.ts';
import type { PictureFacts } from '../../src/photographs/cameraFacts.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import { planeOf } from '../../src/photographs/plane.ts';
import { readPicture, type PictureReading } from '../../src/photographs/reading.ts';
import type { TakenPicture } from '../../src/practice/pictures/takenPicture.ts';
import { SQUARE } from '../../src/practice/pictures/shot.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';
import { RIG_SENSOR, rigPicture } from './rigPicture.ts';

const FACTS: PictureFacts = {
  focalLength: millimetres(85),
  aperture: fNumber(1.8),
  sensor: { width: millimetres(RIG_SENSOR.width), height: millimetres(RIG_SENSOR.height) },
  frame: null,
  printed: TRUE_SIZE,
};
const SMALL = { ...USUAL_SHOT.sensor, width: 960, height: 1560, pitch: 26 / 1560 };
const DEVELOPED = USUAL_SHOT.development;

const taken = (error: number, shot: Parameters<typeof rigPicture>[1] = {}): TakenPicture =>
  rigPicture(error, { ...shot, shot: { sensor: SMALL, ...shot.shot } });

function read({ rgba, width, height }: Pick<TakenPicture, 'rgba' | 'width' | 'height'>, facts: PictureFacts = FACTS): PictureReading {
  return readPicture(wholePicture(planeOf(rgba, width, height)), facts, seededRandom(1));
}

/** The rows and columns from these on, so many of them. */
function cutOut({ rgba, width }: TakenPicture, left: number, top: number, columns: number, rows: number) {
  const kept = new Uint8ClampedArray(4 * columns * rows);
  for (let row = 0; row < rows; row += 1) {
    const from = 4 * ((top + row) * width + left);
    kept.set(rgba.subarray(from, from + 4 * columns), 4 * row * columns);
  }
  return { rgba: kept, width: columns, height: rows };
}

describe('a picture', { timeout: 60_000 }, () => {
  test('of prints that came out at 94% tells true millimetres once their scale is measured, and as it stands only then', () => {
    const picture = taken(20, { printed: 0.94 });
    const [measured, asDrawn] = [0.94 as PrintFactor, TRUE_SIZE].map((printed) => read(picture, { ...FACTS, printed }));
    if (!measured?.focus.ok || !asDrawn?.focus.ok || !measured.target.ok || !asDrawn.target.ok) throw new Error(JSON.stringify([measured, asDrawn]));
    const { error, interval } = measured.focus.value.ramp;
    expect([interval.low < 20, interval.high > 20]).toEqual([true, true]);
    expect(asDrawn.focus.value.ramp.error / error).toBeCloseTo(1 / 0.94, 2);
    expect(measured.target.value.scale / asDrawn.target.value.scale).toBeCloseTo(1 / 0.94, 6);
    // Depth of field goes with the square of the magnification: 12 % of it would be told too much.
    expect(Number(asDrawn.focus.value.depth.total) / Number(measured.focus.value.depth.total)).toBeCloseTo(1 / 0.94 ** 2, 1);
  });

  test('that is blown out on the prints gives no figure of an edge, and none of focus', () => {
    const { target, focus } = read(taken(0, { shot: { development: { ...DEVELOPED, exposure: 4 } } }));
    expect(focus.ok).toBe(false);
    for (const { measure } of target.ok ? target.value.edges : []) expect(measure.ok).toBe(false);
  });

  test('that is all but black gives no figure', () => {
    const { target, focus } = read(taken(0, { shot: { development: { ...DEVELOPED, exposure: 0.003 } } }));
    expect(focus.ok).toBe(false);
    for (const { measure } of target.ok ? target.value.edges : []) expect(measure.ok).toBe(false);
  });

  test.each([
    ['sideways', { x: 7, y: 0 }],
    ['up and down', { x: 0, y: 7 }],
  ] as const)('in which the camera moved %s says so, and gives no focus error but with an interval that holds it', (way, motion) => {
    const { target, focus } = read(taken(10, { shot: { motion } }));
    expect(target.ok && target.value.motion).toMatchObject({ is: 'moved', way });
    if (!focus.ok) return;
    const { low, high } = focus.value.ramp.interval;
    expect([low < 10, high > 10]).toEqual([true, true]);
  });

  test('of a target that is turned far away says by how much, and gives no figure', () => {
    const { target, focus } = read(taken(0, { shot: { pose: { ...SQUARE, swing: 24 } } }));
    if (target.ok || target.fault.is !== 'print too tilted') throw new Error(JSON.stringify(target));
    expect(target.fault.tilt).toBeCloseTo(24, -1);
    expect(focus).toEqual({ ok: false, fault: { is: 'no target' } });
  });

  test('that was cut, or is a screenshot with something around, measures edges, but gives no focus error: its pixels are of no known size', () => {
    const whole = taken(10);
    const { target, focus } = read(cutOut(whole, 0, 60, 960, 1440));
    expect(target.ok).toBe(true);
    expect(focus).toEqual({ ok: false, fault: { is: 'not the whole picture' } });
  });

  test('whose lower part is missing, as in a file that breaks off, measures the target and gives no focus error', () => {
    const whole = taken(10);
    whole.rgba.fill(128, 4 * 960 * 1000);
    const { target, focus } = read(whole);
    expect(target.ok).toBe(true);
    expect(focus.ok).toBe(false);
  });

  test('that shows half the target gives no figure', () => {
    const { target, focus } = read(taken(10, { shot: { pose: { ...SQUARE, right: 175 } } }));
    expect([target.ok, focus.ok]).toEqual([false, false]);
  });

  test('that was sharpened heavily tells by its overshoot, and where focus fell nonetheless', () => {
    const { target, focus } = read(taken(10, { shot: { development: { ...DEVELOPED, exposure: 0.5, sharpening: 1.5 } } }));
    const overshoots = target.ok ? target.value.edges.flatMap(({ measure }) => (measure.ok ? [measure.value.overshoot] : [])) : [];
    expect(Math.max(...overshoots)).toBeGreaterThan(0.1);
    if (!focus.ok) throw new Error(JSON.stringify(focus));
    expect(Math.abs(focus.value.ramp.error - 10)).toBeLessThan(0.1 * Number(focus.value.depth.total));
  });
});
