// What to enter for several situations, derived by hand from the rules; the law between the ends of a zoom is not
// published, so both are given (formulas from memory).
import { describe, expect, it } from 'vitest';
import { commonRange } from '../../src/logbook/entering/band.ts';
import { oneValue } from '../../src/logbook/entering/oneValue.ts';
import { interpolated } from '../../src/logbook/entering/twoValues.ts';
import { throughConverter } from '../../src/logbook/entering/converter.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { bandAt } from '../logbook/entering/bands.ts';

describe('between two stored values of a zoom', () => {
  it('Z1: −4 at 24 mm and +6 at 70 mm give 1.652 at 50 mm, and 2.856 by the logarithm', () => {
    const at = interpolated({ focalLength: 24, value: -4 }, { focalLength: 70, value: 6 }, 50);
    expect(Math.abs(at.linear - 1.652)).toBeLessThanOrEqual(0.001);
    expect(Math.abs(at.logarithmic - 2.856)).toBeLessThanOrEqual(0.001);
  });
});

describe('one value for −4 and +6', () => {
  const bands = [bandAt('wide', -8, 0), bandAt('tele', 2, 10)];

  it('Z2: with bands as wide it is +1, five steps from either', () => {
    const choice = oneValue(USUAL_SCALE, bands, { by: 'worst share' });
    expect(choice?.value).toBe(1);
    expect(choice?.fits.map(({ error }) => Math.abs(error))).toEqual([5, 5]);
  });

  it('Z2: used a quarter and three quarters it is a whole number beside the mean, 3.5, the one nearer zero', () => {
    const use = new Map([
      ['wide', 25],
      ['tele', 75],
    ]);
    expect(0.25 * -4 + 0.75 * 6).toBe(3.5);
    const value = oneValue(USUAL_SCALE, bands, { by: 'use', use })?.value ?? NaN;
    expect(Math.abs(value - 3.5)).toBe(0.5);
  });
});

it('Z3: the values that [0, 8], [−4, 4] and [−7, 1] have in common are 0 to 1, their middle 0.5', () => {
  expect(commonRange([bandAt('a', 0, 8), bandAt('b', -4, 4), bandAt('c', -7, 1)])).toEqual({ low: 0, high: 1, middle: 0.5 });
});

describe('through a converter', () => {
  it.each([
    [2.8, 1.4, 3.92],
    [2.8, 1.7, 4.76],
    [2.8, 2, 5.6],
    [4, 1.4, 5.6],
    [4, 1.7, 6.8],
    [4, 2, 8],
  ])('T1: f/%f with a factor of %f is f/%f', (widest, factor, effective) => {
    expect(Math.abs(throughConverter(factor).fNumber(widest) - effective)).toBeLessThanOrEqual(1e-9);
  });

  it('T2: a factor of 1.4 makes a defocus of the lens 1.96 times as long, 1.4 times as many steps, and an error of the body 0.714 times as many', () => {
    const { length, lensSteps, bodySteps } = throughConverter(1.4);
    expect(Math.abs(length - 1.96)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(lensSteps - 1.4)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(bodySteps - 0.714)).toBeLessThanOrEqual(0.0005);
  });
});
