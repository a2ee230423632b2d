import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Band } from '../../../src/logbook/entering/band.ts';
import { oneValue } from '../../../src/logbook/entering/oneValue.ts';
import { tradeOf } from '../../../src/logbook/entering/trade.ts';
import { USUAL_SCALE, type Scale } from '../../../src/sweep/scale.ts';
import { millimetres, steps } from '../../../src/units.ts';
import { bandAt } from './bands.ts';

const anyScale: fc.Arbitrary<Scale> = fc
  .record({ min: fc.integer({ min: -30, max: 5 }), count: fc.integer({ min: 2, max: 50 }), step: fc.constantFrom(1, 2, 3) })
  .map(({ min, count, step }) => ({ min: steps(min), max: steps(min + count * step), step }));

const anyJob = anyScale.chain((scale) => {
  const index = fc.nat({ max: (scale.max - scale.min) / scale.step });
  const band = fc
    .tuple(index, index)
    .map(([one, other]) => [scale.min + Math.min(one, other) * scale.step, scale.min + Math.max(one, other) * scale.step] as const);
  return fc.record({
    scale: fc.constant(scale),
    ends: fc.array(band, { minLength: 2, maxLength: 6 }),
    use: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 6, maxLength: 6 }),
  });
});

/** From the ends alone, by counting in whole half-steps, so that nothing is shared with what is tested. */
function bruteForce({ min, max, step }: Scale, cost: (value: number) => number): number {
  let best = Infinity;
  for (let value: number = min; value <= max; value += step) best = Math.min(best, cost(value));
  return best;
}

const shareOf = (value: number, [low, high]: readonly [number, number], step: number): number => Math.abs(2 * value - low - high) / (high - low + step);

const asBands = (ends: readonly (readonly [number, number])[], scale: Scale): Band[] =>
  ends.map(([low, high], at) => bandAt(`${at}`, low, high, { step: scale.step }));

describe('one value for several situations', () => {
  it('uses no more of the worst half-band than any other value of the scale', () => {
    fc.assert(
      fc.property(anyJob, ({ scale, ends }) => {
        const chosen = oneValue(scale, asBands(ends, scale), { by: 'worst share' });
        const worst = (value: number): number => ends.reduce((most, band) => Math.max(most, shareOf(value, band, scale.step)), 0);
        expect(worst(chosen?.value ?? NaN)).toBeCloseTo(bruteForce(scale, worst), 9);
      }),
      { numRuns: 500 },
    );
  });

  it('weighted by use, has no more squared error than any other value of the scale', () => {
    fc.assert(
      fc.property(anyJob, ({ scale, ends, use }) => {
        const chosen = oneValue(scale, asBands(ends, scale), { by: 'use', use: new Map(use.map((weight, at) => [`${at}`, weight])) });
        const squared = (value: number): number => ends.reduce((sum, [low, high], at) => sum + (use[at] ?? 0) * ((2 * value - low - high) / 2) ** 2, 0);
        expect(squared(chosen?.value ?? NaN)).toBeCloseTo(bruteForce(scale, squared), 6);
      }),
      { numRuns: 500 },
    );
  });

  it('lies in every band whenever they have a value of the scale in common', () => {
    fc.assert(
      fc.property(anyJob, ({ scale, ends }) => {
        const common = Math.max(...ends.map(([low]) => low)) <= Math.min(...ends.map(([, high]) => high));
        const chosen = oneValue(scale, asBands(ends, scale), { by: 'worst share' });
        expect(chosen?.fits.every(({ inside }) => inside)).toBe(common);
      }),
    );
  });

  it('of two values as good takes the one nearer zero', () => {
    const bands = [bandAt('a', -4, 0), bandAt('b', -1, 3)];
    expect(oneValue(USUAL_SCALE, bands, { by: 'worst share' })?.value).toBe(0);
  });

  it('leaves out what is never used, and chooses nothing where nothing is used', () => {
    const bands = [bandAt('a', 0, 4), bandAt('b', -12, -8)];
    expect(oneValue(USUAL_SCALE, bands, { by: 'use', use: new Map([['b', 0]]) })?.value).toBe(2);
    expect(
      oneValue(USUAL_SCALE, bands, {
        by: 'use',
        use: new Map([
          ['a', 0],
          ['b', 0],
        ]),
      }),
    ).toBeNull();
    expect(oneValue(USUAL_SCALE, [], { by: 'worst share' })).toBeNull();
  });

  it('says for each situation the error, its share of the half-band and how far past the end', () => {
    const [near, far] =
      oneValue(USUAL_SCALE, [bandAt('near', 4, 8), bandAt('far', -6, -2, { distance: millimetres(9000) })], { by: 'worst share' })?.fits ?? [];
    expect(near).toMatchObject({ error: -5, share: 2, inside: false, past: 3 });
    expect(far).toMatchObject({ error: 5, share: 2, inside: false, past: 3 });
  });
});

describe('the trade where no value serves all', () => {
  it('has one option for every largest set of bands that share a value, most first', () => {
    const options = tradeOf(USUAL_SCALE, [bandAt('a', -8, -4), bandAt('b', -5, 1), bandAt('c', 0, 6)]);
    expect(
      options.map(({ value, fits }) => [
        value,
        fits
          .filter(({ inside }) => inside)
          .map(({ band }) => band.id)
          .join(''),
      ]),
    ).toEqual([
      [-4, 'ab'],
      [0, 'bc'],
    ]);
  });

  it('is a single option when a value serves all', () => {
    fc.assert(
      fc.property(anyJob, ({ scale, ends }) => {
        const options = tradeOf(scale, asBands(ends, scale));
        const common = Math.max(...ends.map(([low]) => low)) <= Math.min(...ends.map(([, high]) => high));
        expect(options.length === 1).toBe(common);
      }),
    );
  });
});
