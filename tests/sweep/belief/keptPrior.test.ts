// What the belief opens with, and which bands it keeps, as it was: the prior with and without a memory, the floor below which a band is
// dropped, and other shares of the lights.
import { expect, test } from 'vitest';
import { modelOf } from '../../../src/sweep/belief/belief.ts';
import { observeLights, picked, reshared, startLights, type BandPosterior } from '../../../src/sweep/belief/lights.ts';
import { lampShares, plainBell, priorWeights, widthWeights } from '../../../src/sweep/belief/prior.ts';
import type { Memory } from '../../../src/sweep/memory.ts';
import { steps } from '../../../src/units.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { COARSE, drawn } from '../drawn.ts';
import { summed } from '../../kept/summed.ts';

const { opening } = drawn(1, { count: 0 });
const ofPosterior = ({ which, edges, lamp, mass }: BandPosterior): number[] => [which.length, summed(which), summed(edges), summed(lamp), summed(mass)];

test('bands whose chance falls to the floor are dropped, and only those', () => {
  const { model, posterior } = opening;
  const rows = [0, 1e-4, 2e-3, 0.5].map((floor) => {
    const after = observeLights(model, posterior, null, { stimulus: 3, seen: [0] }, floor);
    return [after.predictive, ...ofPosterior(after.posterior)];
  });
  const even = startLights(
    model,
    Float64Array.from(model.low, (_, h) => Number(h > 4) * 2),
    model.lampShares,
    false,
  );
  const places = Int32Array.from([0, 2, 9]);
  const anew = reshared(model, even, model.evenEdges, model.evenLamps);
  expect(sevenDigits([rows, ofPosterior(even), ofPosterior(picked(model, even, places)), ofPosterior(anew)])).toMatchSnapshot('by the floor');
  const gone = reshared(
    model,
    even,
    model.evenEdges.map(() => 0),
    model.evenLamps,
  );
  expect(sevenDigits([summed(gone.edges), summed(gone.lamp)])).toMatchSnapshot('without a chance');
});

test('what is remembered sharpens what is expected', () => {
  const { model } = opening;
  const memories: readonly Memory[] = [
    { centres: [], halfWidth: null },
    { centres: [{ centre: 2.5, sd: 1, weight: 0.7 }], halfWidth: null },
    { centres: [{ centre: -3, sd: 2, weight: 0.2 }, { centre: 5, sd: 0.5, weight: 0.9 }], halfWidth: { median: 2.5, logSd: 0.3 } }, // prettier-ignore
    { centres: [], halfWidth: null, lamp: [] },
    { centres: [], halfWidth: { median: 0.5, logSd: 0.8 }, lamp: [{ outside: 2, light: 'flicker' }, { outside: 0.4, light: 'late' }] }, // prettier-ignore
  ];
  const rows = memories.map((memory) => [summed(priorWeights(model, memory)), summed(widthWeights(model, memory)), summed(lampShares(model, memory))]);
  const coarse = modelOf(COARSE, false);
  const other = memories.map((memory) => [summed(priorWeights(coarse, memory)), summed(widthWeights(coarse, memory))]);
  expect(sevenDigits([rows, other, [-9, 0, 2, 6.5, 11].map(plainBell(COARSE)), [-9, 0, 2, 6.5, 11].map(plainBell(COARSE, 1.5))])).toMatchSnapshot();
});

test('the bands of a scale are laid out once for each way to lay them out', () => {
  const scale = { min: steps(-3), max: steps(3), step: 1 };
  const model = modelOf(scale, false);
  expect(modelOf({ ...scale }, false)).toBe(model);
  for (const other of [modelOf(scale, true), modelOf(scale, false, 0.05), modelOf(scale, false, undefined, 0.7), modelOf({ ...scale, max: steps(4) }, false)])
    expect(other).not.toBe(model);
});
