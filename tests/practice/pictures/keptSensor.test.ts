// Numbers of the noisy sensor and of the practice camera behind its pictures, kept to seven digits.
import { expect, test } from 'vitest';
import { exposeMosaic } from '../../../src/practice/pictures/mosaicSensor.ts';
import { focusErrorIn, picturedCamera } from '../../../src/practice/pictures/picturedCamera.ts';
import { PRACTICE_DISTANCE, PRACTICE_FACTS, PRACTICE_MAGNIFICATION } from '../../../src/practice/pictures/practiceFacts.ts';
import { practicePrints } from '../../../src/practice/pictures/practicePicture.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { steps } from '../../../src/units.ts';
import { kept } from '../../kept/kept.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { summed } from '../../kept/summed.ts';

const COARSE = { min: steps(-10), max: steps(14), step: 2 };

test('what a sensor counts, colour by colour, and how much chance it takes', () => {
  const exposed = (seed: number, width: number, height: number, fullWell: number, readNoise: number) => {
    const random = seededRandom(seed);
    const light = Float32Array.from({ length: width * height }, (_, at) => ((at * 7) % 31) / 20);
    const { red, green, blue } = exposeMosaic(light, { width, height, pitch: 0.005, fullWell, readNoise }, random);
    return [...[red, green, blue].flatMap(summed), random()];
  };
  // The first comes exactly to the end of the table of noise.
  const shots = [[66, 40, 30, 10_000, 4], [2, 33, 21, 500, 30], [3, 8, 5, 1e12, 0], [4, 5, 8, 40_000, 4]] as const; // prettier-ignore
  expect(shots.map(([seed, width, height, fullWell, readNoise]) => kept(() => exposed(seed, width, height, fullWell, readNoise)))).toMatchSnapshot();
});

test('where the camera of each seed puts focus', () => {
  const cameras = [1, 2, 3, 77, 2024, 999_983].flatMap((seed) => [USUAL_SCALE, COARSE].map((scale) => picturedCamera(seed, scale)));
  expect(sevenDigits(cameras.map((camera) => Object.values(camera)))).toMatchSnapshot('first');
  const random = seededRandom(5);
  const errors = cameras.map((camera) => [
    focusErrorIn(camera, { by: 'live view' }, random),
    focusErrorIn(camera, { by: 'autofocus', at: 3, thrown: 'near' }, random),
    focusErrorIn(camera, { by: 'autofocus', at: -2, thrown: 'far' }, random),
  ]);
  expect(sevenDigits(errors)).toMatchSnapshot('second');
});

test('how large and where its prints are', () => {
  const prints = practicePrints();
  const { width, height } = PRACTICE_FACTS.sensor;
  expect(sevenDigits([PRACTICE_FACTS.focalLength, PRACTICE_FACTS.aperture, width, height, PRACTICE_DISTANCE, PRACTICE_MAGNIFICATION])).toMatchSnapshot('first');
  expect(
    prints.ok &&
      sevenDigits(prints.value.map(({ drawing, origin, right, down }) => [drawing.width, drawing.height, drawing.shapes.length, ...origin, ...right, ...down])),
  ).toMatchSnapshot('second');
});
