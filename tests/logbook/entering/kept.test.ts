// Numbers of what to enter, kept to seven digits: how values stand in bands, one value for all, one for each end of a zoom, and the trade.
import { describe, expect, test } from 'vitest';
import { bandOf, commonRange, fitOf } from '../../../src/logbook/entering/band.ts';
import { throughConverter } from '../../../src/logbook/entering/converter.ts';
import { oneValue } from '../../../src/logbook/entering/oneValue.ts';
import { tradeOf } from '../../../src/logbook/entering/trade.ts';
import { interpolated, twoValues } from '../../../src/logbook/entering/twoValues.ts';
import type { Measured } from '../../../src/logbook/measured.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { steps } from '../../../src/units.ts';
import { orThrown } from '../../kept/orThrown.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { bandAt } from './bands.ts';

const COARSE = { min: steps(-10), max: steps(14), step: 2 };
const LENGTHS = [24, 35, 50, 70];

function bandsOf(seed: number, count: number, step: number) {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, index) => {
    const low = Math.round(-8 + 16 * random());
    return bandAt(`${index}`, low, low + Math.floor(5 * random()) * step, { step, focalLength: LENGTHS[index % 4] ?? 24 });
  });
}
const use = new Map([['0', 3], ['1', 0.5], ['2', 0]]); // prettier-ignore
const jobs = Array.from({ length: 14 }, (_, seed) => ({ scale: seed % 2 ? COARSE : USUAL_SCALE, bands: bandsOf(seed, seed % 7, seed % 2 ? 2 : 1) }));

test('how a value stands in a band', () => {
  const measured = (low: number | null, high: number | null, centre: number | null) =>
    ({ subject: { situation: 's', focalLength: 50, distance: 2500 }, low, high, centre }) as unknown as Measured;
  const known = [measured(2, 8, 5.5), measured(-3, -3, null), measured(2, 7, null)].map((one) => bandOf(one, COARSE));
  expect(sevenDigits(known)).toMatchSnapshot('first');
  expect([measured(null, 4, 3), measured(1, null, 3)].map((one) => orThrown(() => bandOf(one, COARSE)))).toEqual([null, null]);
  const fits = [-2, 0, 1, 4, 6, 8, 9, 12].map((value) => fitOf(value, bandAt('a', 1, 8)));
  expect(sevenDigits(fits.map(({ error, share, inside, past }) => [error, share, Number(inside), past]))).toMatchSnapshot('second');
});

test('the values that lie in every band', () => {
  const range = (...ends: readonly (readonly [number, number])[]) => commonRange(ends.map(([low, high]) => ({ low, high })));
  expect([range([0, 4], [4, 9]), range([0, 3], [4, 9]), range([-5, 5], [-2, 9], [-9, 3])]).toEqual([
    { low: 4, high: 4, middle: 4 },
    null,
    { low: -2, high: 3, middle: 0.5 },
  ]);
});

describe('over many kits', () => {
  const told = (choice: { value: number; fits: readonly { error: number; share: number; past: number }[] } | null) =>
    choice && [choice.value, ...choice.fits.flatMap(({ error, share, past }) => [error, share, past])];

  test('one value', () => {
    const values = jobs.flatMap(({ scale, bands }) => [() => oneValue(scale, bands, { by: 'worst share' }), () => oneValue(scale, bands, { by: 'use', use })]);
    expect(sevenDigits(values.map((value) => orThrown(() => told(value()))))).toMatchSnapshot();
  });

  test('the trade', () => {
    expect(sevenDigits(jobs.map(({ scale, bands }) => orThrown(() => tradeOf(scale, bands).map(told))))).toMatchSnapshot();
  });

  test('one value for each end', () => {
    const range = { from: 24, to: 70 };
    const ends = jobs.map(({ scale, bands }) =>
      orThrown(() => {
        const two = twoValues(scale, range, bands, { by: 'worst share' });
        return (
          two && [
            told(two.wide),
            told(two.tele),
            ...two.middles.map(({ linear, logarithmic }) => [linear.value, linear.error, logarithmic.value, logarithmic.past]),
          ]
        );
      }),
    );
    expect(sevenDigits(ends)).toMatchSnapshot();
    const [, , , job] = jobs.filter(({ bands }) => bands.length > 3);
    expect([twoValues(USUAL_SCALE, { from: 24, to: 24 }, job?.bands ?? [], { by: 'worst share' }), job === undefined]).toEqual([null, false]);
  });
});

test('between the ends, and through a converter', () => {
  const at = (focalLength: number) => Object.values(interpolated({ focalLength: 24, value: -3 }, { focalLength: 70, value: 9 }, focalLength));
  const { fNumber, ...through } = throughConverter(1.4);
  expect(sevenDigits([...[24, 35, 50, 70].map(at), Object.values(through), fNumber(2.8)])).toMatchSnapshot();
});

describe('of two values as good', () => {
  test('the one with the smaller sum of errors, then the one nearer zero, then the lower is taken', () => {
    const value = (...ends: readonly (readonly [number, number])[]) =>
      oneValue(USUAL_SCALE, ends.map(([low, high], at) => bandAt(`${at}`, low, high)), { by: 'worst share' })?.value; // prettier-ignore
    expect([value([2, 3]), value([-3, -2]), value([0, 1]), value([-1, 0])]).toEqual([2, -2, 0, 0]);
    // Between -1 and 0 the worst share is the same; the sum of errors is not.
    expect([value([-4, 3], [-1, 6], [-9, 8]), value([-1, 0], [-1, 0], [-40, 39])]).toEqual([1, 0]);
  });
});
