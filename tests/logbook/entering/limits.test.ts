// Contracts of what to enter, by hand: how a value stands in a band, which of two comes first, which sets are served.
import { describe, expect, test } from 'vitest';
import { commonRange, fitOf, type Band } from '../../../src/logbook/entering/band.ts';
import { throughConverter } from '../../../src/logbook/entering/converter.ts';
import { oneValue } from '../../../src/logbook/entering/oneValue.ts';
import { tradeOf } from '../../../src/logbook/entering/trade.ts';
import { interpolated } from '../../../src/logbook/entering/twoValues.ts';
import { millimetres, steps } from '../../../src/units.ts';

const SCALE = { min: steps(-20), max: steps(20), step: 1 };
const band = (id: string, low: number, high: number, centre = (low + high) / 2): Band => ({
  id,
  focalLength: millimetres(85),
  distance: millimetres(4250),
  low,
  high,
  centre,
  half: (high - low + 1) / 2,
});

test('a value stands in a band by its error, its share of half of it, and how far past the nearer end', () => {
  const of = (value: number) => {
    const { error, share, inside, past } = fitOf(value, band('a', 2, 8));
    return [error, share, inside, past];
  };
  expect([of(5), of(8), of(9), of(2), of(0)]).toEqual([[0, 0, true, 0], [3, 3 / 3.5, true, 0], [4, 4 / 3.5, false, 1], [-3, 3 / 3.5, true, 0], [-5, 5 / 3.5, false, 2]]); // prettier-ignore
});

test('bands share the values from the greatest lower to the least upper end, one at least', () => {
  expect([
    commonRange([band('a', 0, 5), band('b', 3, 9)]),
    commonRange([band('a', 0, 3), band('b', 3, 9)]),
    commonRange([band('a', 0, 2), band('b', 3, 9)]),
  ]).toEqual([{ low: 3, high: 5, middle: 4 }, { low: 3, high: 3, middle: 3 }, null]);
});

describe('one value', () => {
  const worst = (...bands: Band[]) => oneValue(SCALE, bands, { by: 'worst share' })?.value;
  test('has the least worst share of a half-band; of as good ones the least sum of errors, then the one nearest to nothing, then the lower', () => {
    expect(worst(band('a', 0, 4), band('b', 4, 12))).toBe(4);
    // Halves of 2.5 and 4.5 about 2 and 8: at 4 shares of 0.8 and 0.89, at 5 of 1.2 and 0.67.
    expect(worst(band('a', 3, 4))).toBe(3);
    expect(worst(band('a', -4, -3))).toBe(-3);
    expect(worst(band('a', 0, 1), band('b', -1, 0))).toBe(0);
    expect(worst(band('a', -1, 0), band('b', 0, 1), band('c', -5, 5))).toBe(0);
    expect(worst()).toBeUndefined();
  });

  test('weighs by use: what is never used does not count, what is not named counts once', () => {
    const used = (use: Readonly<Record<string, number>>) =>
      oneValue(SCALE, [band('a', 0, 2), band('b', 9, 11)], { by: 'use', use: new Map(Object.entries(use)) });
    expect([used({})?.value, used({ a: 2 })?.value, used({ b: 0 })?.value, used({ a: 0, b: 0 })]).toEqual([5, 4, 1, null]);
    expect(used({ b: 0 })?.fits).toHaveLength(2);
  });
});

describe('where no value lies in every band', () => {
  const served = (...bands: Band[]) =>
    tradeOf(SCALE, bands).map(({ value, fits }) => [
      value,
      fits
        .filter(({ inside }) => inside)
        .map(({ band: { id } }) => id)
        .join(''),
    ]);

  test('each largest set that shares one is an option, those that serve most first', () => {
    expect(served(band('a', 0, 4), band('b', 3, 7), band('c', 3, 5), band('d', 10, 12))).toEqual([[4, 'abc'], [11, 'd']]); // prettier-ignore
    expect(served(band('a', 0, 4), band('b', 3, 7), band('c', 6, 10))).toEqual([[3, 'ab'], [6, 'bc']]); // prettier-ignore
    expect(served(band('a', 0, 4), band('b', 0, 4))).toEqual([[2, 'ab']]);
    expect(served()).toEqual([]);
  });
});

test('between the ends of a zoom a body reckons by the focal length or by its logarithm', () => {
  const at = (focalLength: number) => interpolated({ focalLength: 50, value: 0 }, { focalLength: 200, value: 12 }, focalLength);
  expect([at(50), at(100), at(200)]).toEqual([
    { linear: 0, logarithmic: 0 },
    { linear: 4, logarithmic: expect.closeTo(6, 9) },
    { linear: 12, logarithmic: 12 },
  ]);
});

test('a converter lengthens by its square, counts by itself, and divides what the body is off by', () => {
  const { length, lensSteps, bodySteps, fNumber } = throughConverter(2);
  expect([length, lensSteps, bodySteps, fNumber(2.8)]).toEqual([4, 2, 0.5, 5.6]);
});
