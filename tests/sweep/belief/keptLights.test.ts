// The numbers of the belief, as they were: the lights of the bands, what stories of them give, and every question that is
// asked of the posterior, after seeded holds on several scales.
import { describe, expect, test } from 'vitest';
import { from, joined, openingOf, told, upTo, weighed } from '../../../src/sweep/belief/accounts.ts';
import { averageLight } from '../../../src/sweep/belief/averageLight.ts';
import {
  beliefFrom,
  centreInterval,
  centreOf,
  centreProfile,
  chancesOfIn,
  chanceThat,
  expected,
  fewOf,
  intervalOf,
  likeliestIn,
  mixed,
  modest,
  stimulusOf,
  weigh,
  type Belief,
} from '../../../src/sweep/belief/belief.ts';
import type { Lights } from '../../../src/sweep/belief/bandModel.ts';
import { unbound, weightsOf, type BandPosterior, type Bond } from '../../../src/sweep/belief/lights.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { steps } from '../../../src/units.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { COARSE, drawn, type Drawn } from '../drawn.ts';
import { summed } from '../../kept/summed.ts';

const SERIES: Readonly<Record<string, Drawn>> = {
  plain: drawn(1),
  'with arrows': drawn(2, { arrows: 'right-is-up', count: 6 }),
  'in strides of two': drawn(3, { scale: COARSE, count: 5 }),
  'hardly begun': drawn(4, { count: 1 }),
};
const NAMES = Object.keys(SERIES);
const series = (name: string): Drawn => SERIES[name] ?? drawn(0);

const ofLights = ({ which, edges, lamp }: Lights): number[] => [which.length, summed(which), summed(edges), summed(lamp)];
const ofPosterior = (posterior: BandPosterior): number[] => [...ofLights(posterior), summed(posterior.mass)];

/** Ties the parts of the light together at most widths, unevenly, and knows nothing of one width in five. */
function bondOf({ model }: Belief, seed: number): Bond {
  const random = seededRandom(seed);
  const widths = [...new Set(model.width)].filter((width) => width % 5 !== 4);
  return new Map(widths.map((width) => [width, Float64Array.from({ length: model.edgeKinds * model.lampKinds }, random)]));
}

describe.each(NAMES)('a belief %s', (name) => {
  const { opening, belief, holds } = series(name);
  const { model, posterior } = belief;

  test('answers what the sweep asks of it', () => {
    const { value, chance } = likeliestIn(belief);
    const quantities = [model.low, model.high, model.halfWidth].map((quantity) => Object.values(intervalOf(belief, quantity, 0.8)));
    const profile = centreProfile(belief);
    const places = [model.scale.min, steps(model.scale.min + 4), model.scale.max].map((each) => stimulusOf(model, each));
    const figures = [value, chance, chanceThat(belief, (h) => model.low[h]! > 0.4), Object.values(centreOf(belief)), Object.values(centreInterval(belief))];
    const rows = [profile.length, summed(profile.map(({ at }) => at)), summed(profile.map(({ chance: each }) => each)), ...places];
    expect(sevenDigits([figures.flat(), chancesOfIn(belief), quantities, rows, ofPosterior(posterior)])).toMatchSnapshot();
  });

  test('is moved by one hold after another, with the band where it lies or shifted', () => {
    const after = holds
      .map(({ value, reading }, at) => weigh(opening, value, reading, at / 2 - 1))
      .map((one) => [one.predictive, ...ofPosterior(one.belief.posterior)]);
    expect(sevenDigits([holds.map(({ predictive }) => predictive), after])).toMatchSnapshot();
  });

  test('is stood in for, made modest, and mixed with another', () => {
    const few = [1, 7, 40, posterior.which.length - 1, posterior.which.length, posterior.which.length + 1].map((count) => ofPosterior(fewOf(belief, count)));
    const [experiment, grid] = expected(model, fewOf(belief, 20));
    const rows = new Float64Array(experiment.outcomes * experiment.hypotheses);
    const predicted = Array.from({ length: experiment.stimuli }, (_, stimulus) => {
      experiment.likelihoods(stimulus, grid.which, rows);
      return summed(rows);
    });
    const both = mixed(belief, opening.posterior, 0.3).posterior;
    const stand = [experiment.hypotheses, experiment.outcomes, summed(grid.which), summed(grid.mass), both.which.length, summed(both.which), summed(both.mass)];
    const light = averageLight(belief);
    const average = model.values.map((_, at) => summed(light(at, [0, 1], opening.posterior.which)));
    expect(sevenDigits([few, predicted, stand, ofPosterior(modest(belief).posterior), average])).toMatchSnapshot();
  });

  test('weighs stories put together from two halves', () => {
    const bands = openingOf(opening, Int32Array.from([3, 5, 8, 40, 77, 100_000]));
    const before = upTo(opening, bands, holds);
    const after = from(opening, bands, holds, 1.5, Math.min(2, holds.length));
    const all = from(opening, bands, holds, -2);
    const halves = before.map((one, k) => [summed(joined(opening, bands, one, after[k] ?? one)), summed(joined(opening, bands, one, all[k] ?? one))]);
    const next = holds.slice(0, 1).map((hold) => ofLights(told(opening, bands, hold, 0.5)));
    expect(sevenDigits([[before.length, after.length, all.length], [before, after, all].map((some) => some.map(ofLights)), halves, next])).toMatchSnapshot();
  });

  test('may have both parts of its light tied together', () => {
    const bond = bondOf(belief, 5);
    const first = beliefFrom(
      model,
      Float64Array.from(model.low, (_, h) => (bond.has(model.width[h] ?? -1) ? (h % 3) + 1 : 0)),
      model.lampShares,
      bond,
    );
    const after = holds.reduce((now, { value, reading }) => weigh(now, value, reading).belief, first);
    const bands = openingOf(first, Int32Array.from([4, 5, 7, 41]));
    const before = upTo(first, bands, holds);
    const halves = before.map((one, k) => summed(joined(first, bands, one, from(first, bands, holds, 1)[k] ?? one)));
    const loose = unbound(model, after.posterior, bond);
    const strange = unbound(model, { ...bands, edges: bands.edges.map((_, at) => (at % 7) + 1) }, new Map([...bond].slice(1, 3)));
    const kept = [
      ofPosterior(first.posterior),
      ofPosterior(after.posterior),
      ofPosterior(loose),
      ofPosterior(strange),
      ofPosterior(unbound(model, after.posterior, null)),
    ];
    expect(sevenDigits([kept, summed(weightsOf(model, after.posterior, bond)), halves, summed(weighed(first, bands, before.at(-1) ?? bands))])).toMatchSnapshot(
      'tied',
    );
    expect(modest(after)).toBe(after);
    expect(sevenDigits(ofPosterior(fewOf(after, 10)))).toMatchSnapshot('few of them');
  });
});
