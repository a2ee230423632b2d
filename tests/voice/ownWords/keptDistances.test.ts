// The numbers of comparing shapes, kept to seven digits: the way of one along the other, the measure, the distance to a word.
import { expect, test } from 'vitest';
import { align, type Alignment } from '../../../src/voice/ownWords/alignment.ts';
import type { Cepstra } from '../../../src/voice/ownWords/cepstra.ts';
import { carryingIn, inScene, sceneOf, speechOf } from '../../../src/voice/ownWords/inNoise.ts';
import { scatterOf } from '../../../src/voice/ownWords/scatter.ts';
import { distanceTo } from '../../../src/voice/ownWords/wordDistance.ts';
import { kept } from '../../kept/kept.ts';
import { summed } from '../../kept/summed.ts';
import { framesBy, loudnessBy, runs, shapeBy } from './keptStuff.ts';

const short = ({ apart, warped, way, along }: Alignment): number[] => [apart, warped, way.length, summed(way), summed(along)];
const SIZES = [[0, 0], [0, 3], [3, 0], [1, 1], [1, 2], [2, 1], [3, 4], [4, 4], [5, 9], [8, 8], [9, 7], [12, 3], [3, 14], [15, 16], [20, 33], [34, 18], [30, 30], [48, 55], [60, 56], [57, 61], [64, 72], [80, 64], [25, 70], [90, 40]] as const; // prettier-ignore

test('the way of one shape along another', () => {
  const told = () =>
    SIZES.flatMap(([n, m], seed) => [
      short(align(shapeBy(seed, n, 3), shapeBy(seed + 100, m, 3))),
      short(align(shapeBy(seed, n, 1, true), shapeBy(seed + 100, m, 1, true))),
      // The same thing, at another pace and with other ends.
      short(align(shapeBy(seed, n, 2), shapeBy(seed, m, 2))),
    ]);
  expect(kept(told)).toMatchSnapshot();
});

test('the way of a shape that is stretched or moved', () => {
  const shape = shapeBy(7, 64, 2);
  const of = (rows: readonly number[]) => ({ values: Float32Array.from(rows.flatMap((row) => Array.from(shape.values.subarray(2 * row, 2 * row + 2)))), length: rows.length, width: 2 }); // prettier-ignore
  const all = Array.from({ length: 64 }, (_, row) => row);
  const changed = [...[1, 13, 14, 15, 16, 17, 20].flatMap((left) => [all.slice(left), all.slice(0, -left), [...all.slice(-left), ...all]]), all.flatMap((row) => (row % 3 === 0 ? [row, row] : [row])), all.flatMap((row) => (row > 20 && row < 40 ? [row, row, row] : [row]))]; // prettier-ignore
  expect(kept(() => changed.flatMap((rows) => [short(align(shape, of(rows))), short(align(of(rows), shape))]))).toMatchSnapshot();
});

test('the measure by which takes scatter', () => {
  const words = [[20, 22, 25], [14, 14], [30]].map((lengths, word) => lengths.map((length, take) => shapeBy(10 * word + take, length, 4)));
  const measured = () =>
    [scatterOf(words)(shapeBy(99, 6, 4)), scatterOf([[shapeBy(1, 5, 2)], []])(shapeBy(3, 2, 2)), scatterOf([])(shapeBy(3, 2, 2))].flatMap(
      ({ values, length, width }) => [values, length, width],
    );
  expect(kept(measured)).toMatchSnapshot();
});

test('words without their noise, and in the noise of a scene', () => {
  const told = () =>
    [0.01, 0.5, 3, 40, 2000].flatMap((level) =>
      [1, 2, 3].map((seed) => {
        const noise = Float32Array.from(framesBy(seed + 50, [level], 8)[0] ?? []);
        const speech = speechOf(framesBy(seed, loudnessBy(seed, 5, level), 8), noise);
        const scene = sceneOf(
          framesBy(seed + 9, loudnessBy(seed + 9, 5, 2), 8),
          Float32Array.from(noise, (power) => 3 * power),
        );
        const there = inScene(speech, scene);
        return [
        summed(speech.powers), speech.level, summed(speech.frames.flatMap((frame) => [...frame])),
        scene.level, scene.floor, scene.clearance, summed(scene.rows), scene.rows.length, summed(scene.shape.values),
        carryingIn(speech, scene), summed(there.values), there.length,
      ]; // prettier-ignore
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('how far a word is', () => {
  const noise = new Float32Array(8).fill(0.5);
  const told = () => [1, 2, 3, 4, 5].flatMap((takes) =>
    [[10, 14], [14, 15], [15, 3], [16, 17], [30, 2], [0, 12]].map(([loud = 0, quiet = 0], at) => {
      const speech = Array.from({ length: takes }, (_, take) => speechOf(framesBy(take, runs([1, 6], [40, 12 + take], [3, 5], [90, 6 + 2 * take], [1, 5]), 8), noise)); // prettier-ignore
      const scene = sceneOf(framesBy(at + 20, runs([0.4, 3], [60, loud], [0.5, quiet], [30, loud >> 1], [0.4, 4]), 8), noise);
      const { apart, warped, closest, worst, carrying } = distanceTo('one', speech, scene, (shape) => shape);
      return [apart, warped, closest, worst, carrying];
    }),
  ); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('how far a word is whose beginning no take has, or that is very near', () => {
  const noise = new Float32Array(8).fill(0.5);
  const other = framesBy(40, runs([80, 9]), 8).map((frame) => frame.map((power, b) => (b < 4 ? power * 50 : power / 50)));
  const word = framesBy(1, runs([40, 12], [3, 5], [90, 8], [20, 10]), 8);
  const speech = [1, 2].map((seed) => speechOf(framesBy(seed, runs([40, 12], [3, 5], [90, 8], [20, 10]), 8), noise));
  const told = () =>
    [1, 0.001].flatMap((scale) =>
      [[...other, ...word], word].map((frames) => {
        const measured = (shape: Cepstra): Cepstra => ({ ...shape, values: shape.values.map((value) => scale * value) });
        const { apart, closest, worst } = distanceTo('one', speech, sceneOf(frames, noise), measured);
        return [apart, closest, worst];
      }),
    );
  expect(kept(told)).toMatchSnapshot();
});
