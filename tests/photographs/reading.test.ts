// Contract of what one picture shows: every part is there or has a fault of its own, and nothing is told that the picture does
// not bear out. The pictures are those of the tests' own camera.
import { describe, expect, test } from 'vitest';
import { TRUE_SIZE } from '../../src/optics/print/printCheck.ts';
import { fNumber } from '../../src/optics/quantity.ts';
import type { PictureFacts } from '../../src/photographs/cameraFacts.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import { planeOf } from '../../src/photographs/plane.ts';
import { readPicture, type PictureReading } from '../../src/photographs/reading.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { RIG_SENSOR, rigPicture } from './rigPicture.ts';

const FACTS: PictureFacts = {
  printed: TRUE_SIZE,
  focalLength: millimetres(85),
  aperture: fNumber(1.8),
  sensor: { width: millimetres(RIG_SENSOR.width), height: millimetres(RIG_SENSOR.height) },
  frame: null,
};

function read(focusError: number, prints: 'both' | 'target' | 'none', facts: PictureFacts = FACTS): PictureReading {
  const { rgba, width, height } = rigPicture(focusError, { prints });
  return readPicture(wholePicture(planeOf(rgba, width, height)), facts, seededRandom(1));
}

describe('one picture', { timeout: 60_000 }, () => {
  test('in which focus fell 30 mm behind the target says so with its interval, and that this is not sharp', () => {
    const { target, focus } = read(30, 'both');
    if (!target.ok || !focus.ok) throw new Error(JSON.stringify({ target, focus }));
    const { ramp, depth, is, share, outline } = focus.value;
    expect(Math.abs(ramp.error - 30)).toBeLessThan(0.1 * Number(depth.total));
    expect([ramp.interval.low <= 30, ramp.interval.high >= 30, ramp.lies, is]).toEqual([true, true, 'behind', 'not sharp']);
    expect(share).toBeGreaterThan(1);
    expect([outline.length, target.value.outline.length]).toEqual([4, 4]);
    expect(target.value.edges.map(({ edge }) => `${edge.at} ${edge.runs}`)).toEqual(
      ['middle', 'corner', 'corner', 'corner', 'corner'].flatMap((at) => [`${at} upright`, `${at} level`]),
    );
    expect(target.value.edges.every(({ measure }) => measure.ok)).toBe(true);
    expect(target.value.tilt).toBeLessThan(3);
  });

  test('of a target alone measures its edges, and says that the ramp is missing', () => {
    const { target, focus } = read(0, 'target');
    expect(target.ok).toBe(true);
    expect(focus).toEqual({ ok: false, fault: { is: 'no ramp', why: { is: 'no print' } } });
  });

  test('of a camera that is not known says what is lacking, and gives no error of focus', () => {
    const { target, focus } = read(0, 'both', { ...FACTS, aperture: null, sensor: null });
    expect(target.ok).toBe(true);
    expect(focus).toEqual({ ok: false, fault: { is: 'camera unknown', lacking: ['aperture', 'sensor'] } });
  });

  test('of a file that was resized says by how much, and where focus fell all the same', () => {
    const { target, focus } = read(30, 'both', { ...FACTS, frame: { width: 5200, height: 3200 } });
    expect(target).toMatchObject({ ok: true, value: { resized: 0.5 } });
    expect(focus.ok).toBe(true);
    expect(read(30, 'both')).toMatchObject({ target: { ok: true, value: { resized: null } } });
  });

  test('of a file that was cropped gives no error of focus, and says why', () => {
    const { target, focus } = read(30, 'both', { ...FACTS, frame: { width: 3000, height: 1600 } });
    expect(target.ok).toBe(true);
    expect(focus).toEqual({ ok: false, fault: { is: 'cropped' } });
  });

  test('without any print gives no figure at all', () => {
    expect(read(0, 'none')).toEqual({ target: { ok: false, fault: { is: 'no print' } }, focus: { ok: false, fault: { is: 'no target' } } });
  });
});
