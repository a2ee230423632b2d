// Contract of takes in another noise: what is left of a take above its own noise, at the level heard now, in the noise of now.
import { expect, test } from 'vitest';
import { shapeOf } from '../../../src/voice/ownWords/cepstra.ts';
import { carryingIn, inScene, sceneOf, speechOf } from '../../../src/voice/ownWords/inNoise.ts';

const frame = (...powers: number[]) => Float32Array.from(powers);

test('a take without its noise; of a band that the noise covers a fiftieth is left', () => {
  const { frames, powers, level } = speechOf([frame(11, 1), frame(1, 101)], frame(1, 1));
  expect(frames[0]?.[0]).toBe(10);
  expect(frames[0]?.[1]).toBeCloseTo(0.02, 6);
  expect(frames[1]?.[1]).toBe(100);
  expect(powers[0]).toBeCloseTo(10.02, 4);
  // Both are within 20 dB of the loudest, 100.02.
  expect(level).toBeCloseTo((10.02 + 100.02) / 2, 4);
});

test('the level is that of the frames within 20 dB of the loudest', () => {
  expect(speechOf([frame(100), frame(1), frame(50)], frame(0)).level).toBe(75);
  expect(speechOf([frame(100), frame(2), frame(48)], frame(0)).level).toBe(50);
});

test('a row of a scene carries the word from half the noise, and from 0.003 of its level', () => {
  const inNoise = sceneOf([frame(101, 1), frame(1.9, 1), frame(2.1, 1), frame(1, 1)], frame(1, 1));
  // Over the noise: 100, 0.9, 1.1, 0; half the noise is 1. The level is 100 and 1.1 on the mean: 50.55.
  expect(inNoise.rows).toEqual([0, 2]);
  expect(inNoise.level).toBeCloseTo(50.55, 4);
  expect(inNoise.clearance).toBeCloseTo(10 * Math.log10(50.55 / 2), 4);
  expect(inNoise.floor).toBeCloseTo((0.04 * 50.55) / 2, 6);
  const quiet = sceneOf([frame(1000), frame(2.9), frame(3.1)], frame(0.001));
  expect(quiet.rows).toEqual([0, 2]);
  // 1 over the noise is no more than half of it.
  expect(sceneOf([frame(101, 1), frame(2, 1)], frame(1, 1)).rows).toEqual([0]);
});

test('a scene is heard with half its noise more and the floor, a take at its level in half as much noise again', () => {
  const heard = [frame(101, 1), frame(31, 21)];
  const noise = frame(1, 1);
  const scene = sceneOf(heard, noise);
  expect(scene.level).toBe(75);
  expect(scene.floor).toBeCloseTo(1.5, 6);
  expect(scene.shape.values).toEqual(shapeOf([frame(103, 3), frame(33, 23)]).values);
  const take = { frames: [frame(2, 4), frame(6, 0)], powers: [6, 6], level: 150 };
  const expected = shapeOf([frame(1 + 3, 2 + 3), frame(3 + 3, 3)]).values;
  for (const [at, value] of inScene(take, scene).values.entries()) expect(value).toBeCloseTo(expected[at] ?? NaN, 4);
});

test('the rows of a take that would carry it in a scene are counted at the level of the scene', () => {
  const scene = sceneOf([frame(101, 1), frame(1, 101)], frame(1, 1));
  expect(scene.level).toBe(100);
  // Half the noise is 1, so of a take at level 1,000 a row carries it from more than 10.
  expect(carryingIn({ frames: [], powers: [1000, 11, 10, 9], level: 1000 }, scene)).toBe(2);
});

test('silence has a level, too', () => {
  expect(sceneOf([frame(0)], frame(0))).toMatchObject({ level: 1e-12, clearance: 80 });
});
