import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { homographyFrom } from '../../src/photographs/homography.ts';
import { poseOf } from '../../src/photographs/pose.ts';
import { millimetres as mm } from '../../src/units.ts';
import { mountTarget, project, projectionOf } from '../../src/practice/pictures/mounted.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';

describe('how a print stands to the camera', () => {
  test('distance and tilt come back from where the print falls, to 1 % and 0.3°', () => {
    const degrees = fc.double({ min: -8, max: 8, noNaN: true });
    const lengths = fc.record({ focalLength: fc.integer({ min: 24, max: 300 }), times: fc.integer({ min: 20, max: 80 }) });
    fc.assert(
      fc.property(lengths, degrees, degrees, fc.double({ min: -180, max: 180, noNaN: true }), ({ focalLength, times }, lean, swing, roll) => {
        const sheet = mountTarget({ width: mm(200), height: mm(260), shapes: [] });
        const lens = { ...USUAL_SHOT.lens, focalLength, distance: focalLength * times };
        const projection = projectionOf(sheet, { ...USUAL_SHOT, lens, pose: { lean, swing, roll, right: 20, down: -10 } });
        const pairs = [-90, 0, 90].flatMap((x) => [-120, 0, 120].map((y) => ({ from: { x, y }, to: project(projection, x + 100, y + 130) })));
        const { width, height } = USUAL_SHOT.sensor;
        const pose = poseOf(homographyFrom(pairs)!, { focalLength: mm(focalLength), pitch: mm(USUAL_SHOT.sensor.pitch), width, height });
        const radian = Math.PI / 180;
        expect(Math.abs(pose.distance / Math.hypot(lens.distance, 20, 10) - 1)).toBeLessThan(0.01);
        expect(Math.abs(pose.tilt - Math.acos(Math.cos(lean * radian) * Math.cos(swing * radian)) / radian)).toBeLessThan(0.3);
      }),
    );
  });
});
