// Contracts of when it is enough, and of the two ends, at their limits: on beliefs that are laid by hand, band by band.
import { describe, expect, test } from 'vitest';
import { chancesOfIn, type Belief } from '../../../src/sweep/belief/belief.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import { endsOf, type HeldValue } from '../../../src/sweep/end/ends.ts';
import { holdsToCome } from '../../../src/sweep/end/remaining.ts';
import { steps } from '../../../src/units.ts';
import { believing, held } from './laid.ts';

const BAND = believing([-3.5, 3.5, 1]);
const ALL = held([3, 'in'], [4, 'out'], [-3, 'in'], [-4, 'out']);

describe('an end', () => {
  const ends = (belief: Belief, holds: HeldValue[]) => endsOf(belief, holds);

  test('is the outermost value that is believed to hold, and the one beyond; settled where both were held', () => {
    const inside = chancesOfIn(BAND);
    expect([inside[3 + 8]! >= 0.5, inside[4 + 8]! < 0.5]).toEqual([true, true]);
    expect(ends(BAND, ALL)).toEqual({ low: { known: 'settled', last: -3, next: -4 }, high: { known: 'settled', last: 3, next: 4 } });
  });

  test('is open where one of them was not held, whichever', () => {
    const high = (...holds: readonly (readonly [number, 'in' | 'out'])[]) => ends(BAND, held(...holds))?.high;
    expect(high([3, 'in'])).toEqual({ known: 'open', last: 3, next: 4, heldIn: true, heldOut: false });
    expect(high([4, 'out'])).toEqual({ known: 'open', last: 3, next: 4, heldIn: false, heldOut: true });
    expect(high([3, 'out'], [4, 'in'])).toEqual({ known: 'open', last: 3, next: 4, heldIn: false, heldOut: false });
    expect(high([-3, 'in'], [-4, 'out'])).toMatchObject({ known: 'open', heldIn: false, heldOut: false });
  });

  test('is seen where nine tenths do not put it within 0.75 steps of the middle of both', () => {
    const mixed = (share: number) => ends(believing([-3.5, 3.5, share], [-3.5, 2.5, 1 - share]), ALL)?.high.known;
    expect([mixed(0.91), mixed(0.89)]).toEqual(['settled', 'seen']);
    const near = (edge: number) => ends(believing([-3.5, 3.5, 0.6], [-3.5, edge, 0.4]), ALL)?.high.known;
    expect([near(4), near(4.5), near(3), near(2.5)]).toEqual(['settled', 'seen', 'settled', 'seen']);
  });

  test('is past the limit where the limit held, and nine tenths put it beyond', () => {
    const past = (share: number, ...holds: readonly (readonly [number, 'in' | 'out'])[]) =>
      ends(believing([2, 9.5, share], [2, 8, 1 - share]), held(...holds))?.high;
    expect(past(0.91, [8, 'in'])).toEqual({ known: 'past', last: 8 });
    expect(past(0.89, [8, 'in'])).toMatchObject({ known: 'open', last: 8, next: null });
    expect(past(0.91, [8, 'out'])).toMatchObject({ known: 'open' });
    expect(ends(believing([-9.5, -2, 1]), held([-8, 'in']))?.low).toEqual({ known: 'past', last: -8 });
    expect(ends(believing([-8, -2, 1]), held([-8, 'in']))?.low).toMatchObject({ known: 'open' });
  });

  test('is as before where it was there, and one of the two was held anew', () => {
    const before = { ...BAND, remembered: { low: steps(-3), high: steps(3) } } as Belief;
    expect(ends(before, held([3, 'in']))).toMatchObject({ high: { known: 'as before', last: 3, next: 4 }, low: { known: 'open' } });
    expect(ends(before, held([-4, 'out']))).toMatchObject({ low: { known: 'as before', last: -3 }, high: { known: 'open' } });
    expect(ends(before, ALL)).toMatchObject({ high: { known: 'settled' }, low: { known: 'settled' } });
    expect(ends({ ...BAND, remembered: { low: steps(-2), high: steps(2) } } as Belief, held([3, 'in']))?.high.known).toBe('open');
  });

  test('is none where nothing is believed to hold, but for a value that held', () => {
    const narrow = believing([0, 0.5, 1]);
    expect(Math.max(...chancesOfIn(narrow))).toBeLessThan(0.5);
    expect([ends(narrow, held([0, 'out'])), ends(narrow, held([5, 'in']))]).toEqual([null, null]);
    expect(ends(narrow, held([0, 'in']))).not.toBeNull();
  });
});

describe('it is enough', () => {
  test('where a band lies wholly past a limit for nine tenths', () => {
    const above = (share: number) => readiness(believing([8.5, 10, share], [2, 6, 1 - share]), [], 'quick');
    expect([above(0.9001), above(0.8999)]).toMatchObject([{ ready: true, as: 'beyond the scale', side: 'above' }, { ready: false }]);
    expect(readiness(believing([-10, -8.5, 1]), [], 'quick')).toMatchObject({ as: 'beyond the scale', side: 'below' });
    expect(readiness(believing([8, 10, 1]), [], 'quick')).not.toMatchObject({ as: 'beyond the scale' });
  });

  test('where one end is past the limit and the other seen, or both past', () => {
    const past = believing([2.5, 9.5, 1]);
    expect(readiness(past, held([8, 'in'], [3, 'in'], [2, 'out']), 'thorough')).toMatchObject({ ready: true, as: 'past the limit' });
    expect(readiness(past, held([8, 'in'], [3, 'in']), 'thorough')).not.toMatchObject({ as: 'past the limit' });
    expect(readiness(believing([-9.5, 9.5, 1]), held([8, 'in'], [-8, 'in']), 'thorough')).toMatchObject({ as: 'past the limit' });
    expect(readiness(believing([-9.5, -2.5, 1]), held([-8, 'in'], [-3, 'in'], [-2, 'out']), 'thorough')).toMatchObject({ as: 'past the limit' });
  });

  test('at quick care for a centre that is sure by 0.95, at more for ends that are seen or settled', () => {
    const sure = (share: number) => believing([-3.5, 3.5, share], [2.5, 9.5, 1 - share]);
    expect([readiness(sure(0.951), ALL, 'quick'), readiness(sure(0.949), ALL, 'quick')]).toMatchObject([
      { ready: true, as: 'band' },
      { ready: false, wanted: 'centre' },
    ]);
    const seen = believing([-3.5, 3.5, 0.6], [-3.5, 4.5, 0.4]);
    expect([readiness(seen, ALL, 'standard'), readiness(seen, ALL, 'thorough')]).toMatchObject([{ ready: true }, { ready: false, wanted: 'ends' }]);
    expect([readiness(BAND, ALL, 'thorough'), readiness(BAND, ALL.slice(1), 'standard')]).toMatchObject([
      { ready: true, as: 'band' },
      { ready: false, wanted: 'ends' },
    ]);
    expect(readiness(BAND, ALL.slice(0, 3), 'standard')).toMatchObject({ ready: false, wanted: 'ends' });
  });

  test('where nothing held in twelve holds, and nothing more likely than a quarter', () => {
    const out = (count: number) => held(...Array.from({ length: count }, (_, at) => [at % 7, 'out'] as const));
    const hardly = believing([0, 0.5, 0.3], [5, 5.5, 0.35], [-5, -4.5, 0.35]);
    expect(Math.max(...chancesOfIn(hardly))).toBeLessThan(0.25);
    expect([readiness(hardly, out(12), 'standard'), readiness(hardly, out(11), 'standard')]).toMatchObject([
      { ready: true, as: 'nothing held' },
      { ready: false },
    ]);
    expect(readiness(hardly, [...out(12), ...held([1, 'in'])], 'standard')).not.toMatchObject({ as: 'nothing held' });
    // One that more likely than not lies past a limit is looked for six holds more.
    const leaning = (share: number) => believing([8.5, 9, share], [5, 5.5, (1 - share) / 2], [-5, -4.5, (1 - share) / 2]);
    expect([
      readiness(leaning(0.51), out(17), 'standard'),
      readiness(leaning(0.51), out(18), 'standard'),
      readiness(leaning(0.49), out(12), 'standard'),
    ]).toMatchObject([{ ready: false }, { as: 'nothing held' }, { as: 'nothing held' }]);
  });
});

test('as many holds are to come as are missing, one at least, and none once it is enough', () => {
  const count = (holds: HeldValue[], care: 'quick' | 'standard' | 'thorough') => holdsToCome(BAND, readiness(BAND, holds, care), care);
  expect([count(ALL, 'standard'), count([], 'quick')]).toEqual([0, 0]);
  // The centre is sure: 1.6, and 0.45 for each of what is missing of the ends.
  expect([count([], 'standard'), count(ALL.slice(0, 3), 'standard'), count(ALL.slice(0, 2), 'standard')]).toEqual([3, 2, 3]);
  // 0.9, a half for each missing part and 1.55 for each end that is not settled.
  expect([count([], 'thorough'), count(ALL.slice(0, 2), 'thorough')]).toEqual([6, 3]);
});
