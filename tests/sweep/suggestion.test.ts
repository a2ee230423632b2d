// Contract of the suggestion: the order of its thought, with a rating of the values that is told.
import { describe, expect, test } from 'vitest';
import { openBelief } from '../../src/sweep/belief/belief.ts';
import type { Hold } from '../../src/sweep/hold.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import type { SearchState } from '../../src/sweep/next/searchState.ts';
import { suggest } from '../../src/sweep/next/suggestion.ts';
import { moment, seconds, steps } from '../../src/units.ts';

const SCALE = { min: steps(-4), max: steps(4), step: 1 };
const belief = openBelief(SCALE, false, NO_MEMORY);
const hold = (value: number, counts: 'in' | 'out', predictive = 0.5) =>
  ({
    value: steps(value),
    verdict: { light: counts === 'in' ? 'steady' : 'dark', arrows: 'none' },
    reading: { counts },
    predictive,
    began: moment(0),
  }) as unknown as Hold;
const state = (told: Partial<SearchState>): SearchState => ({
  belief,
  holds: [hold(0, 'in')],
  readiness: { ready: false, wanted: 'centre', ends: null },
  care: 'standard',
  order: 'fewest',
  dialled: steps(0),
  holdTime: seconds(5),
  skipped: [],
  ...told,
});
/** The value 3 is worth most, then -2. */
const rating = () => [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((value) => ({ value: steps(value), worth: value === 3 ? 9 : value === -2 ? 8 : 1, chanceOfIn: 0.5 }));
const next = (told: Partial<SearchState>) => suggest(state(told), rating);

const open = (last: number, beyond: number | null, heldIn: boolean, heldOut: boolean) =>
  ({ known: 'open', last: steps(last), next: beyond === null ? null : steps(beyond), heldIn, heldOut }) as const;
const seen = (last: number, beyond: number) => ({ known: 'seen', last: steps(last), next: steps(beyond) }) as const;

describe('the next value', () => {
  test('is where the centre most likely is to begin with, unless that was passed over', () => {
    expect(next({ holds: [] })).toEqual({ value: 0, reason: { because: 'start' } });
    expect(next({ holds: [], skipped: [steps(0)] }).value).toBe(3);
  });

  test('is the last one again where its reading was hardly to be expected, once', () => {
    expect(next({ holds: [hold(1, 'in'), hold(2, 'out', 0.019)] })).toEqual({ value: 2, reason: { because: 'again', value: 2 } });
    expect(next({ holds: [hold(1, 'in'), hold(2, 'out', 0.02)] }).value).toBe(3);
    expect(next({ holds: [hold(2, 'in'), hold(2, 'out', 0.01)] }).value).toBe(3);
    expect(next({ holds: [hold(2, 'out', 0.01), hold(1, 'in')] }).value).toBe(3);
    expect(next({ holds: [hold(2, 'out', 0.01)], skipped: [steps(2)] }).value).toBe(3);
  });

  test('is the next of the walk where that was chosen', () => {
    expect(next({ order: 'outward' })).toMatchObject({ value: 1, reason: { because: 'beyond', side: 'above' } });
    expect(next({ order: 'outward', skipped: [steps(1)] }).value).toBe(3);
  });

  test('is what is worth most while the centre is not sure', () => {
    expect(next({})).toMatchObject({ value: 3, reason: { because: 'beyond', side: 'above' } });
    expect(next({ skipped: [steps(3)] }).value).toBe(-2);
  });

  test('shows an end once the centre is sure: the last that holds or the next beyond', () => {
    const ends = { low: seen(-1, -2), high: open(1, 2, true, false) };
    expect(next({ readiness: { ready: false, wanted: 'ends', ends } })).toEqual({ value: 2, reason: { because: 'end', side: 'high', part: 'next' } });
    expect(next({ readiness: { ready: false, wanted: 'ends', ends: { ...ends, high: open(1, 2, false, true) } } })).toEqual({
      value: 1,
      reason: { because: 'end', side: 'high', part: 'last' },
    });
    expect(next({ readiness: { ready: false, wanted: 'ends', ends: { ...ends, high: open(4, null, true, false) } } })).toEqual({
      value: 4,
      reason: { because: 'end', side: 'high', part: 'last' },
    });
    expect(next({ readiness: { ready: true, as: 'band', ends } })).toMatchObject({ value: 2 });
    expect(next({ readiness: { ready: false, wanted: 'ends', ends }, skipped: [steps(2)] }).value).toBe(3);
  });

  test('wants an end that is seen only at thorough care', () => {
    const ends = { low: seen(-1, -2), high: { known: 'settled', last: steps(1), next: steps(2) } as const };
    const readiness = { ready: false, wanted: 'ends', ends } as const;
    expect(next({ readiness }).value).toBe(3);
    expect(next({ readiness, care: 'thorough' })).toMatchObject({ reason: { because: 'end', side: 'low' } });
    const before = { known: 'as before', last: steps(-1), next: steps(-2), heldIn: true, heldOut: false } as const;
    expect(next({ readiness: { ...readiness, ends: { ...ends, low: before } } }).value).toBe(3);
    expect(next({ readiness: { ...readiness, ends: { ...ends, low: before } }, care: 'thorough' })).toEqual({
      value: -2,
      reason: { because: 'end', side: 'low', part: 'next' },
    });
  });

  test('is the likeliest where the centre is sure and nothing is believed to hold', () => {
    const found = next({ readiness: { ready: false, wanted: 'ends', ends: null } });
    expect(found).toEqual({ value: 0, reason: { because: 'surer', of: { value: 0, light: 'steady', counts: 'in' } } });
    expect(next({ readiness: { ready: false, wanted: 'ends', ends: null }, skipped: [steps(0)] }).value).toBe(3);
  });
});
