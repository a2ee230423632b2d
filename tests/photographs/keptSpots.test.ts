// Dark spots in noise, where every pixel lies near the bound and the surroundings' ends count: kept, so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { darkSpots } from '../../src/photographs/darkSpots.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';
import { summed } from '../kept/summed.ts';

test.each([[140, 150, 1, 60], [57, 90, 1, 9], [90, 58, 2, 30], [30, 20, 1, 9], [3, 3, 1, 3]])('spots in noise of %i by %i pixels, from %i to %i wide', (width, height, least, most) => {
  const told = () =>
    [1, 2, 3].map((seed) => {
      const random = seededRandom(seed);
      const light = Float32Array.from({ length: width * height }, (_, pixel) => 0.2 + 0.8 * random() + (0.3 * (pixel % width)) / width);
      const spots = darkSpots({ width, height, light }, least, most);
      return [spots.length, summed(spots.map(({ area }) => area)), summed(spots.flatMap(({ outline }) => outline.flatMap(({ x, y }) => [x, y])))];
    });
  expect(kept(told)).toMatchSnapshot();
}); // prettier-ignore
