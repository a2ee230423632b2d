// Numbers of sweeps joined, compared and followed over months, kept to seven digits; and the bounds of that, each just below and at it.
import { describe, expect, test } from 'vitest';
import { combine, compare, estimateOf, sweepsDiffer } from '../../src/logbook/combined.ts';
import { centreAt, trendOf } from '../../src/logbook/trend.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { moment, steps } from '../../src/units.ts';
import { orThrown } from '../kept/orThrown.ts';
import { sevenDigits } from '../kept/sevenDigits.ts';

const DAY = 86_400_000;
const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

function estimatesOf(seed: number, count: number, between: number) {
  const random = seededRandom(seed);
  return upTo(count).map(() => {
    const variance = 0.1 + random();
    return { value: 3 + normal(random, 0, between) + normal(random, 0, Math.sqrt(variance)), variance };
  });
}

describe('sweeps joined', () => {
  test('few and many, that agree and that do not', () => {
    const joined = [0, 1, 2, 3, 5, 9].flatMap((count, seed) => [0, 0.5, 3].map((between) => orThrown(() => combine(estimatesOf(seed, count, between)))));
    expect(sevenDigits(joined)).toMatchSnapshot();
  });

  test('from the interval of each, no surer than half a step allows', () => {
    const of = (centre: number | null, from: number, to: number) => estimateOf({ centre, interval: { from, to } });
    expect(sevenDigits([of(2.5, 2, 4), of(2, 1.9, 2.1), of(-3, -3, -3)])).toMatchSnapshot();
    expect([of(null, 1, 2), orThrown(() => estimateOf({ centre: 1, interval: null }))]).toEqual([null, null]);
    // 0.5 / √12, its square: the variance of what is rounded to half a step.
    expect(of(2, 2, 2)?.variance).toBeCloseTo(0.25 / 12, 12);
  });

  test('two and two', () => {
    const pairs = upTo(12).map((at) => estimatesOf(at, 2, at / 2));
    expect(sevenDigits(pairs.map(([one, other]) => (one && other ? Object.values(compare(one, other)).map(Number) : [])))).toMatchSnapshot();
  });

  test('the odds of twenty to one are enough to tell of it', () => {
    const apart = (steps: number) => [{ value: 0, variance: 0.25 }, { value: -steps, variance: 0.25 }] as const; // prettier-ignore
    const odds = (steps: number) => compare(...apart(steps)).bayesFactor;
    // By hand: √(0.5 / 9.5) exp(x² / 2 (1 / 0.5 - 1 / 9.5)) is 20 at 2.1704 steps.
    expect([odds(2.168) < 20, odds(2.176) > 20, odds(2.176) < 20.5]).toEqual([true, true, true]);
    expect([sweepsDiffer(apart(2.168)), sweepsDiffer(apart(2.176))?.trouble]).toEqual([null, 'sweeps differ']);
    expect([orThrown(() => sweepsDiffer([])), sweepsDiffer(apart(9).slice(1))]).toEqual([null, null]);
  });
});

describe('a trend', () => {
  const sweepOn = (day: number, centre: number, half = 0.5, low: number | null = -3, high: number | null = 4) => ({
    at: moment(day * DAY),
    centre,
    interval: { from: centre - half, to: centre + half },
    low: low === null ? null : steps(low),
    high: high === null ? null : steps(high),
  });

  test('over many histories', () => {
    const histories = upTo(16).map((seed) => {
      const random = seededRandom(seed);
      const drift = (seed % 4) * 0.01;
      return upTo(3 + (seed % 7)).map((at) => sweepOn(at * 40 + 20 * random(), drift * at * 40 + normal(random, 0, seed % 3 ? 0.2 : 2), 0.2 + random()));
    });
    const told = histories.map((history) =>
      orThrown(() => {
        const trend = trendOf(history);
        return trend && [trend.tells, { ...trend.moved }, { ...trend.line }, [-90, 33, 400].map((day) => Object.values(centreAt(trend, day * DAY)))];
      }),
    );
    expect(sevenDigits(told)).toMatchSnapshot();
  });

  const steady = (days: readonly number[], low: number | null = -3, high: number | null = 4) =>
    days.map((day) => sweepOn(day, 1 + (day % 2) / 10, 0.3, low, high));

  test('is told of two weeks and of four sweeps, and not of less', () => {
    expect(trendOf(steady([0, 5, 9, 14]))?.tells).toBe('none');
    expect(trendOf(steady([0, 5, 9, 13.99]))).toBeNull();
    expect(trendOf(steady([0, 9, 14]))).toBeNull();
    expect(orThrown(() => trendOf([]))).toBeNull();
  });

  test('is none within half of the newest band whose ends are both known, and without one it is not told', () => {
    const far = [0, 100, 200, 300];
    expect(orThrown(() => trendOf(steady(far, null, 4)))).toBeNull();
    expect(orThrown(() => trendOf(steady(far, -3, null)))).toBeNull();
    const reach = trendOf(steady(far, -99, 99))?.moved;
    const most = Math.max(-(reach?.from ?? 0), reach?.to ?? 0);
    // Half a band is half of one more than its ends lie apart.
    expect(trendOf(steady(far, 0, 2 * most - 0.99))?.tells).toBe('none');
    expect(trendOf(steady(far, 0, 2 * most - 1.01))).toBeNull();
    const mixed = (...bands: (readonly [number | null, number | null])[]) =>
      trendOf(bands.map(([low, high], at) => sweepOn(at * 100, 1, 0.3, low, high)))?.tells;
    expect(mixed([0, 0], [-9, 9], [null, 9], [-9, null])).toBe('none');
    expect(mixed([-9, 9], [-9, 9], [-9, 9], [0, 0])).toBeUndefined();
  });

  test('a fall is a drift like a rise', () => {
    expect([1, -1].map((way) => trendOf([0, 1, 2, 3].map((at) => sweepOn(at * 100, way * at)))?.tells)).toEqual(['drift', 'drift']);
  });
});
