// Contract of the practice camera as its pictures show it: one for every seed, on its scale, and focus falls where its centre, its
// step and its correction say, give or take its own scatter.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cameraOf } from '../../../src/practice/cameras.ts';
import { focusErrorIn, picturedCamera, type PracticeTurn } from '../../../src/practice/pictures/picturedCamera.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { isOnScale, USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { steps } from '../../../src/units.ts';

const COARSE = { min: steps(-10), max: steps(10), step: 2 };
const scales = fc.constantFrom(USUAL_SCALE, COARSE);
const seeds = fc.integer({ min: 0, max: 2 ** 32 - 1 });

test('the same seed is the same camera, centred on the band that its light shows, and set to a correction of its scale', () => {
  fc.assert(
    fc.property(seeds, scales, (seed, scale) => {
      const camera = picturedCamera(seed, scale);
      expect(picturedCamera(seed, scale)).toEqual(camera);
      const { low, high } = cameraOf({ seed }, scale, 'right-is-up');
      expect(camera.centre).toBe((low + high) / 2);
      expect(isOnScale(scale, camera.set)).toBe(true);
      expect(camera.step).toBeGreaterThan(0);
    }),
  );
});

function meanOf(turn: PracticeTurn, camera = picturedCamera(5, USUAL_SCALE)): { mean: number; deviation: number } {
  const random = seededRandom(11);
  const errors = Array.from({ length: 4000 }, () => focusErrorIn(camera, turn, random));
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  return { mean, deviation: Math.sqrt(errors.reduce((sum, error) => sum + (error - mean) ** 2, 0) / errors.length) };
}

test('a correction above the centre puts focus behind the target, by a step’s worth each; near and far differ as the camera does', () => {
  const camera = picturedCamera(5, USUAL_SCALE);
  const [near, far] = (['near', 'far'] as const).map((thrown) => meanOf({ by: 'autofocus', at: camera.centre + 4, thrown }));
  expect(((near?.mean ?? 0) + (far?.mean ?? 0)) / 2).toBeCloseTo(4 * camera.step, 1);
  expect((near?.mean ?? 0) - (far?.mean ?? 0)).toBeCloseTo(camera.nearLessFar * camera.step, 1);
  expect(near?.deviation).toBeCloseTo(camera.scatter * camera.step, 1);
});

test('live view falls on the target, whatever the correction', () => {
  expect(meanOf({ by: 'live view' }).mean).toBeCloseTo(0, 1);
});
