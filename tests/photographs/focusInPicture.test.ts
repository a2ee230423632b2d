import { describe, expect, test } from 'vitest';
import { millimetres } from '../../src/units.ts';
import { fNumber } from '../../src/optics/quantity.ts';
import { focusInPicture } from '../../src/photographs/focusInPicture.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import { planeOf } from '../../src/photographs/plane.ts';
import { photograph, type KeptShot } from './camera/photograph.ts';
import { rigFor } from './camera/rig.ts';
import { SQUARE } from '../../src/practice/pictures/shot.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';

const LENS = { ...USUAL_SHOT.lens, focalLength: 50, aperture: 1.4, distance: 2500, focusError: -25 };
const SENSOR = { ...USUAL_SHOT.sensor, width: 900, height: 1500 };
const OPTICS = { focalLength: millimetres(50), aperture: fNumber(1.4), pitch: millimetres(0.006) };
const RIG = rigFor({ lens: LENS, sensor: SENSOR }, 1.5);

const shot = (lean: number, swing: number): KeptShot => ({
  ...USUAL_SHOT,
  lens: LENS,
  sensor: SENSOR,
  pose: { ...SQUARE, lean, swing, roll: 3, down: -110 },
});
const measured = (taken: KeptShot, sheets = RIG.sheets.slice(0)) => {
  const { rgba, width, height } = photograph(sheets, taken, 5);
  return focusInPicture(wholePicture(planeOf(rgba, width, height)), OPTICS);
};

describe('one whole picture', () => {
  test.each([
    [0, 0],
    [7, -6],
    [-6, 7],
  ])('tells the focus error to 3 parts in a hundred of the depth of field, leaning by %d° and swung by %d°', (lean, swing) => {
    const answer = measured(shot(lean, swing));
    if (!answer.ok) throw new Error(`${answer.fault.print}: ${answer.fault.fault.is}`);
    const { error, interval, lies } = answer.value;
    expect(Math.abs(error + 25) / Number(RIG.depth.total)).toBeLessThan(0.03);
    expect(interval.low).toBeLessThanOrEqual(-25);
    expect(interval.high).toBeGreaterThanOrEqual(-25);
    expect(lies).toBe('in front');
  });

  test('without the ramp, or without anything, says which print is missing', () => {
    expect(measured(shot(0, 0), [RIG.sheets[0]])).toMatchObject({ ok: false, fault: { print: 'ramp' } });
    expect(measured(shot(0, 0), [])).toMatchObject({ ok: false, fault: { print: 'target' } });
  });
});
