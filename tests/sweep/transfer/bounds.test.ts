// What follows of a width transfer at each of its limits: which way the focus is to be turned, what is opened and what is not, and when
// what was carried over needs service (the rules: common practice, no source).
import { describe, expect, test } from 'vitest';
import type { End } from '../../../src/sweep/end/ends.ts';
import type { Readiness } from '../../../src/sweep/end/care.ts';
import type { Outcome } from '../../../src/sweep/end/outcome.ts';
import { transferPlan } from '../../../src/sweep/transfer/opened.ts';
import { wayToTurn } from '../../../src/sweep/transfer/turning.ts';
import { seconds, steps } from '../../../src/units.ts';
import { drawn } from '../drawn.ts';
import { opened } from '../staged.ts';

const seen = (last: number): End => ({ known: 'seen', last: steps(last), next: steps(last) });
const past = (last: number): End => ({ known: 'past', last: steps(last) });
const settled = (last: number): End => ({ known: 'settled', last: steps(last), next: steps(last) });

describe('the way to turn', () => {
  const way = (side: 'low' | 'high', visible: number | null, low: End, high: End) => {
    const readiness: Readiness = { ready: true, as: 'past the limit', ends: { low, high } };
    return wayToTurn({ of: 'a', side, visible: visible === null ? null : steps(visible), holds: [] }, readiness);
  };

  test('is further where the visible end is as far out as before or farther in, the other way where it is nearer the limit', () => {
    expect([way('high', 3, seen(2), past(5)), way('high', 3, seen(3), past(5)), way('high', 3, seen(4), past(5))]).toEqual(['further', 'further', 'other way']);
    expect([way('low', -3, past(-5), seen(-2)), way('low', -3, past(-5), seen(-3)), way('low', -3, past(-5), settled(-4))]).toEqual([
      'further',
      'further',
      'other way',
    ]);
    expect([way('high', null, seen(4), past(5)), way('low', null, past(-5), seen(-4))]).toEqual(['further', 'further']);
  });

  test('is back where the band runs past the other limit, and none where it runs past both', () => {
    expect([way('high', 3, past(-5), seen(2)), way('low', -3, seen(2), past(5))]).toEqual(['back', 'back']);
    expect([way('high', 3, past(-5), past(5)), way('low', 3, past(-5), past(5))]).toEqual([null, null]);
  });

  test('is told by the side on which a band lies beyond the scale, and back where nothing held', () => {
    const of = (side: 'low' | 'high', readiness: Readiness) => wayToTurn({ of: 'a', side, visible: null, holds: [] }, readiness);
    const beyond = (side: 'above' | 'below'): Readiness => ({ ready: true, as: 'beyond the scale', side });
    expect([of('high', beyond('above')), of('high', beyond('below')), of('low', beyond('above')), of('low', beyond('below'))]).toEqual([
      'other way',
      'back',
      'back',
      'other way',
    ]);
    expect(of('high', { ready: true, as: 'nothing held' })).toBe('back');
    expect([of('high', { ready: true, as: 'band', ends: null }), of('high', { ready: false, wanted: 'centre', ends: null })]).toEqual([null, null]);
  });
});

describe('a transfer is opened', () => {
  const { holds } = drawn(1, { count: 3 });
  const { plan } = opened({ bench: { ticked: [], readings: [] } });
  const tally = { holds: 3, seconds: seconds(9) };
  const interval = { from: 1, to: 3 };
  const planFrom = (outcome: Outcome, told: Partial<Parameters<typeof transferPlan>[0]> = {}) =>
    transferPlan({ id: 'a', plan, holds, dialled: steps(2), ...told }, outcome);
  const pastLimit = (side: 'low' | 'high' | 'both'): Outcome => ({
    found: 'past the limit',
    side,
    visible: side === 'both' ? null : steps(1),
    bound: 3,
    interval,
    tally,
  });

  test('from a band past one limit or beyond the scale, on its side', () => {
    const transfers = [pastLimit('high'), pastLimit('low'), { found: 'beyond the scale', side: 'above', tally } as const, { found: 'beyond the scale', side: 'below', tally } as const].map((outcome) => planFrom(outcome)?.transfer); // prettier-ignore
    expect(transfers).toMatchObject([
      { of: 'a', side: 'high', visible: 1 },
      { side: 'low', visible: 1 },
      { side: 'high', visible: null },
      { side: 'low', visible: null },
    ]);
    expect(planFrom(pastLimit('high'))).toMatchObject({ start: 2, transfer: { holds: holds.map(({ value, verdict }) => ({ value, verdict })) } });
    expect(planFrom(pastLimit('high'))).not.toHaveProperty('bench');
  });

  test('not past both, nor where nothing was found, nor without a hold, nor from a transfer', () => {
    expect([planFrom(pastLimit('both')), planFrom({ found: 'nothing', tally }), planFrom(pastLimit('high'), { holds: [] })]).toEqual([null, null, null]);
    const transfer = { of: 'b', side: 'high', visible: null, holds: [] } as const;
    expect(planFrom(pastLimit('high'), { plan: { ...plan, transfer: { ...transfer, holds: [] } } })).toBeNull();
  });

  test('with standard care for quick, and otherwise the same', () => {
    const care = (one: 'quick' | 'standard' | 'thorough') =>
      planFrom(pastLimit('low'), { plan: { ...plan, manner: { ...plan.manner, care: one } } })?.manner.care;
    expect([care('quick'), care('standard'), care('thorough')]).toEqual(['standard', 'standard', 'thorough']);
  });
});
