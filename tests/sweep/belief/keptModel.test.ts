// The numbers of the band model, as they were: what every band gives to every outcome, on and off the scale and half-way between
// two values, on scales of several lengths and strides, with arrows and without.
import { describe, expect, test } from 'vitest';
import { bandModel, USUAL_LAPSE, type BandModel, type Lights } from '../../../src/sweep/belief/bandModel.ts';
import { EDGES, SOFT } from '../../../src/sweep/belief/edges.ts';
import { gradesOf, LAMPS, zonesAt } from '../../../src/sweep/belief/lamp.ts';
import { ogive } from '../../../src/sweep/belief/normalOgive.ts';
import { valuesOf, type Scale } from '../../../src/sweep/scale.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { steps } from '../../../src/units.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { COARSE } from '../drawn.ts';
import { summed } from '../../kept/summed.ts';

const TINY: Scale = { min: steps(-2), max: steps(2), step: 1 };
const MODELS = {
  'without arrows': bandModel(TINY, false, USUAL_LAPSE),
  'with arrows': bandModel(TINY, true, 0.05),
  'in strides of two': bandModel(COARSE, true, 0.01, 0.5),
};

/** A light for some of the bands, no two alike; the weights of each band's kinds sum to 1. */
function lightsOf({ hypotheses, edgeKinds, lampKinds }: BandModel, every: number): Lights {
  const random = seededRandom(every);
  const which = Int32Array.from({ length: Math.ceil(hypotheses / every) }, (_, k) => k * every);
  const table = (kinds: number): Float64Array =>
    Float64Array.from(
      [...which].flatMap(() => {
        const row = Array.from({ length: kinds }, random);
        const sum = row.reduce((all, each) => all + each, 0);
        return row.map((each) => each / sum);
      }),
    );
  return { which, edges: table(edgeKinds), lamp: table(lampKinds) };
}

/** On the scale, between two values, off it, and as far off as the tables reach. */
function stimuliOf({ scale, values }: BandModel, reach: number): number[] {
  const margin = Math.ceil((reach * (scale.max - scale.min)) / (2 * scale.step)) * 2;
  const points = (values.length - 1) * 2 + 1 + 2 * margin;
  return [-1.5, -1, 0, 0.5, 1, 2, 3.5, values.length - 1, values.length + 2, (2 * points - margin) / 2, (-points - 1 - margin) / 2];
}

const REACH = { 'without arrows': 0.3, 'with arrows': 0.3, 'in strides of two': 0.5 };

describe.each(Object.keys(MODELS) as (keyof typeof MODELS)[])('the model %s', (name) => {
  const model = MODELS[name];
  const lights = lightsOf(model, 7);
  const stimuli = stimuliOf(model, REACH[name]);
  const outcomes = Array.from({ length: model.outcomes }, (_, outcome) => outcome);

  test('lays out its bands', () => {
    const { hypotheses, stimuli: places, edgeKinds, lampKinds, low, high, centre, halfWidth, width } = model;
    const between = Array.from({ length: hypotheses }, (_, h) => Number(model.isBetween(h)));
    const figures = [hypotheses, places, model.outcomes, edgeKinds, lampKinds, ...[low, high, centre, halfWidth, width, between].map(summed)];
    const shares = [model.edgeShares, model.lampShares, model.evenEdges, model.evenLamps];
    expect(sevenDigits({ figures, low: low.slice(0, 12), high: high.slice(-12), shares })).toMatchSnapshot();
  });

  test('weighs the kinds of each band by one outcome and by several', () => {
    const seen = [...outcomes.map((outcome) => [outcome]), outcomes.slice(1), outcomes.slice(2, 4), [1, model.outcomes - 1]];
    const rows = stimuli.map((stimulus) =>
      seen.flatMap((some) => {
        const after = { which: lights.which, edges: lights.edges.slice(), lamp: lights.lamp.slice() };
        model.weigh(stimulus, some, after);
        return [summed(after.edges), summed(after.lamp)];
      }),
    );
    expect(sevenDigits(rows)).toMatchSnapshot();
  });

  test('has an answer for every outcome at every stimulus', () => {
    const { which, edges, lamp } = lights;
    const all = stimuli.flatMap((stimulus) => outcomes.map((outcome) => [stimulus, outcome] as const));
    expect(() => all.map(([stimulus, outcome]) => model.weigh(stimulus, [outcome], { which, edges: edges.slice(), lamp: lamp.slice() }))).not.toThrow();
    expect(() => model.averaged(model.edgeShares, model.lampShares)(0, outcomes, which)).not.toThrow();
  });

  test('predicts every outcome of every band', () => {
    const predict = model.predicting(lights);
    const n = lights.which.length;
    const into = new Float64Array(n * model.outcomes);
    const rows = stimuli.map((stimulus) => {
      predict(stimulus, into);
      return outcomes.map((outcome) => summed(into.subarray(outcome * n, (outcome + 1) * n)));
    });
    expect(sevenDigits(rows)).toMatchSnapshot();
  });

  test('gives one light to all bands', () => {
    const light = model.averaged(model.edgeShares, lights.lamp.slice(0, model.lampKinds));
    const uneven = model.averaged(lights.edges.slice(0, model.edgeKinds), model.lampShares);
    const rows = stimuli.map((stimulus) =>
      [...outcomes.map((outcome) => [outcome]), outcomes.slice(1)].flatMap((some) => [light, uneven].map((each) => summed(each(stimulus, some, lights.which)))),
    );
    expect(sevenDigits(rows)).toMatchSnapshot();
  });
});

test.each([
  [1, 80, 1],
  [1, 82, 2],
  [2, 84, 2],
])('edges of a scale in strides of %i with %i points lie %i points apart', (step, points, apart) => {
  // Above eighty points there are only edges between two values.
  const scale: Scale = { min: steps(0), max: steps((points / 2) * step), step };
  const { width, isBetween, hypotheses } = bandModel(scale, false, USUAL_LAPSE, 0);
  expect(valuesOf(scale)).toHaveLength(points / 2 + 1);
  expect([Math.min(...width), isBetween(0)]).toEqual([apart, apart === 2]);
  expect(hypotheses).toBe(apart === 2 ? ((points / 2) * (points / 2 - 1)) / 2 : ((points + 1) * points) / 2);
});

test('the kinds of ends and lamps, and how a light fails by its distance', () => {
  const distances = [-6, -2, -0.5, 0, 0.5, 1, 1.5, 2.25, 3, 5.5, 6, 8, 10, 14];
  const failing = distances.map((distance) => LAMPS.map((lamp) => summed(gradesOf(lamp, zonesAt(distance)))));
  expect(sevenDigits([SOFT, EDGES.map((kind) => Object.values(kind)), LAMPS.map((kind) => Object.values(kind))])).toMatchSnapshot('kinds');
  expect(sevenDigits([distances.map(ogive), distances.map((distance) => [zonesAt(distance).near, ...zonesAt(distance).dark]), failing])).toMatchSnapshot(
    'by distance',
  );
});
