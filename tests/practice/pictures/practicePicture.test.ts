// Contract of a practice picture: drawn by its seed alone, and what reads a person's pictures finds in it the focus error it was
// taken with.
import { expect, test } from 'vitest';
import { TRUE_SIZE } from '../../../src/optics/print/printCheck.ts';
import { wholePicture } from '../../../src/photographs/pixelSource.ts';
import { planeOf } from '../../../src/photographs/plane.ts';
import { readPicture } from '../../../src/photographs/reading.ts';
import { focusErrorIn, picturedCamera, type PracticeTurn } from '../../../src/practice/pictures/picturedCamera.ts';
import { PRACTICE_FACTS } from '../../../src/practice/pictures/practiceFacts.ts';
import { practicePicture, practicePrints } from '../../../src/practice/pictures/practicePicture.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';

const prints = practicePrints();
const camera = picturedCamera(3, USUAL_SCALE);

function taken(turn: PracticeTurn, seed: number) {
  if (!prints.ok) throw new Error(prints.fault.is);
  return practicePicture(prints.value, camera, turn, seed);
}

test('the same seed gives the same picture, another one another', { timeout: 30_000 }, () => {
  const [one, same, other] = [1, 1, 2].map((seed) => Buffer.from(taken({ by: 'live view' }, seed).rgba));
  expect(one && same && one.equals(same)).toBe(true);
  expect(one && other && one.equals(other)).toBe(false);
});

test.each([
  [-6, 8],
  [7, 10],
])('its focus error is read off it, %d steps from the centre, within the interval that is stated', { timeout: 30_000 }, (off, seed) => {
  const turn = { by: 'autofocus', at: camera.centre + off, thrown: 'near' } as const;
  const { rgba, width, height } = taken(turn, seed);
  const { target, focus } = readPicture(wholePicture(planeOf(rgba, width, height)), { ...PRACTICE_FACTS, frame: null, printed: TRUE_SIZE }, seededRandom(1));
  if (!target.ok || !focus.ok) throw new Error(JSON.stringify({ target, focus }));
  const truth = focusErrorIn(camera, turn, seededRandom(seed));
  const { low, high } = focus.value.ramp.interval;
  expect([low < truth, truth < high]).toEqual([true, true]);
  expect(high - low).toBeLessThan(0.25 * Number(focus.value.depth.total));
});
