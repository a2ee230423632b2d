// Contract of the sensor: colours between the filters are the mean of their neighbours, noise is that of light and of reading, a full well
// cuts off. A well of 10¹² electrons has hardly any noise.
import { describe, expect, test } from 'vitest';
import { exposeMosaic } from '../../../src/practice/pictures/mosaicSensor.ts';
import { seededRandom } from '../../../src/practice/random.ts';

const QUIET = { fullWell: 1e12, readNoise: 0 };
const exposed = (width: number, height: number, light: (x: number, y: number) => number, noise = QUIET, seed = 1) =>
  exposeMosaic(
    Float32Array.from({ length: width * height }, (_, at) => light(at % width, Math.floor(at / width))),
    { width, height, pitch: 0.005, ...noise } as never,
    seededRandom(seed),
  );

test('grey stays grey, and what rises evenly rises evenly in every colour', () => {
  const { red, green, blue } = exposed(8, 6, (x, y) => 0.2 + 0.05 * x + 0.03 * y);
  for (const colour of [red, green, blue])
    for (let y = 1; y < 5; y++) for (let x = 1; x < 7; x++) expect(colour[y * 8 + x]).toBeCloseTo(0.2 + 0.05 * x + 0.03 * y, 4);
});

test('at a border the neighbour inside stands for the one outside', () => {
  const { red, green, blue } = exposed(4, 4, (x, y) => 0.1 * x + 0.02 * y);
  const at = (colour: Float32Array, x: number, y: number): number => colour[y * 4 + x] ?? NaN;
  // Red at the first of the first row; its green are 0.1 right (twice) and 0.02 below (twice), its blue lie at 0.12.
  expect(at(red, 0, 0)).toBeCloseTo(0, 5);
  expect(at(green, 0, 0)).toBeCloseTo(0.06, 5);
  expect(at(blue, 0, 0)).toBeCloseTo(0.12, 5);
  // The last of the first row is green: red twice 0.2 to its left, blue twice 0.32 below.
  expect(at(red, 3, 0)).toBeCloseTo(0.2, 5);
  expect(at(green, 3, 0)).toBeCloseTo(0.3, 5);
  expect(at(blue, 3, 0)).toBeCloseTo(0.32, 5);
  // The last of the last row is blue: 0.36; red at 0.24 (four times), green 0.26 and 0.34, twice each.
  expect(at(blue, 3, 3)).toBeCloseTo(0.36, 5);
  expect(at(red, 3, 3)).toBeCloseTo(0.24, 5);
  expect(at(green, 3, 3)).toBeCloseTo(0.3, 5);
  // The first of the last row is green: blue to its right, red above.
  expect(at(blue, 0, 3)).toBeCloseTo(0.16, 5);
  expect(at(red, 0, 3)).toBeCloseTo(0.04, 5);
});

test('a well is full at 1 in green, 1.9 in red, 1.6 in blue', () => {
  const { red, green, blue } = exposed(4, 4, () => 5);
  expect([red[5], green[5], blue[5]]).toEqual([1.9, 1, 1.6].map((most) => expect.closeTo(most, 5)));
  expect(exposed(4, 4, () => 1.5).red[5]).toBeCloseTo(1.5, 4);
});

describe('the noise', () => {
  const spread = (readNoise: number, seed = 1): { mean: number; deviation: number } => {
    const { green } = exposed(200, 200, () => 0.5, { fullWell: 10_000, readNoise }, seed);
    const own = [...green].filter((_, at) => ((at % 200) + Math.floor(at / 200)) % 2 === 1);
    const mean = own.reduce((sum, value) => sum + value, 0) / own.length;
    return { mean, deviation: Math.sqrt(own.reduce((sum, value) => sum + (value - mean) ** 2, 0) / own.length) };
  };

  test('of 5,000 electrons is their root, 71', () => {
    const { mean, deviation } = spread(0);
    expect(mean).toBeCloseTo(0.5, 3);
    expect(deviation / 0.00707107).toBeGreaterThan(0.97);
    expect(deviation / 0.00707107).toBeLessThan(1.03);
  });

  test('of reading, 100 electrons, adds by the squares: 122', () => {
    const { deviation } = spread(100);
    expect(deviation / 0.0122474).toBeGreaterThan(0.97);
    expect(deviation / 0.0122474).toBeLessThan(1.03);
  });

  test('is the same for a seed, and another for another', () => {
    expect(spread(0, 2)).toEqual(spread(0, 2));
    expect(spread(0, 2)).not.toEqual(spread(0, 3));
  });
});
