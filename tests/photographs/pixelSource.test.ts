// Contract of what the measurements ask a picture for: nothing is read beside the boxes that were asked for, so that a browser need not
// hand out the rest; and what is reduced keeps its light.
import { expect, test } from 'vitest';
import { TRUE_SIZE } from '../../src/optics/print/printCheck.ts';
import { fNumber } from '../../src/optics/quantity.ts';
import { wholePicture, type PixelSource } from '../../src/photographs/pixelSource.ts';
import { planeOf, type Plane } from '../../src/photographs/plane.ts';
import { readPicture } from '../../src/photographs/reading.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';
import { RIG_SENSOR, rigPicture } from './rigPicture.ts';

const FACTS = {
  focalLength: millimetres(85),
  aperture: fNumber(1.8),
  sensor: { width: millimetres(RIG_SENSOR.width), height: millimetres(RIG_SENSOR.height) },
  frame: null,
  printed: TRUE_SIZE,
};

/** No number stands where nothing was asked for: whatever it comes into is no number, too. */
function sparing(plane: Plane): PixelSource & { readonly asked: () => number } {
  const whole = wholePicture(plane);
  const { width, height } = plane;
  const light = new Float32Array(width * height).fill(Number.NaN);
  return {
    ...whole,
    reduced: (factor) => (factor === 1 ? plane : whole.reduced(factor)),
    around: ({ left, top, right, bottom }) => {
      const [from, end] = [Math.max(0, Math.floor(left)), Math.min(width, Math.ceil(right))];
      for (let y = Math.max(0, Math.floor(top)); y < Math.min(height, Math.ceil(bottom)); y++) {
        if (end > from) light.set(plane.light.subarray(y * width + from, y * width + end), y * width + from);
      }
      return { width, height, light };
    },
    asked: () => light.reduce((sum, each) => sum + (Number.isNaN(each) ? 0 : 1), 0) / light.length,
  };
}

test('a picture of which only the boxes asked for are there reads the same as a whole one, and less than a third of it is asked for', () => {
  for (const error of [20, -30]) {
    const { rgba, width, height } = rigPicture(error);
    const plane = planeOf(rgba, width, height);
    const some = sparing(plane);
    const reading = readPicture(some, FACTS, seededRandom(1));
    expect(reading.focus.ok).toBe(true);
    expect(reading).toEqual(readPicture(wholePicture(plane), FACTS, seededRandom(1)));
    expect(some.asked()).toBeLessThan(1 / 3);
  }
});

test('what is reduced is the mean of squares, and an odd row or column at the end is left out', () => {
  const plane = { width: 5, height: 4, light: Float32Array.from({ length: 20 }, (_, at) => at) };
  const { width, height, light } = wholePicture(plane).reduced(2);
  expect([width, height]).toEqual([2, 2]);
  expect([...light]).toEqual([3, 5, 13, 15]);
  expect(wholePicture(plane).reduced(1)).toBe(plane);
});
