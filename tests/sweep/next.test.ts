// Contracts of what the search says and spends: why a value comes next, what a hold costs, where the walk outwards goes on.
import { describe, expect, test } from 'vitest';
import { openBelief } from '../../src/sweep/belief/belief.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import { nearestMiddle, roundToHalf } from '../../src/sweep/end/outcome.ts';
import type { Hold } from '../../src/sweep/hold.ts';
import { outwardFrom } from '../../src/sweep/next/outward.ts';
import { reasonFor, reasonToStart } from '../../src/sweep/next/reason.ts';
import { secondsOfHold } from '../../src/sweep/next/seconds.ts';
import type { Scale } from '../../src/sweep/scale.ts';
import { moment, seconds, steps } from '../../src/units.ts';

const hold = (value: number, counts: 'in' | 'out', light: 'steady' | 'late' | 'dark' = counts === 'in' ? 'steady' : 'dark') =>
  ({ value: steps(value), verdict: { light, arrows: 'none' }, reading: { counts }, predictive: 1 }) as unknown as Hold;
const SCALE: Scale = { min: steps(-4), max: steps(4), step: 1 };

test('a hold costs four seconds and 0.3 a step of the scale to dial, and its hold time as often as it holds, else two', () => {
  const cost = (from: number, to: number, step: number, held: number) => secondsOfHold(steps(from), steps(to), step, held, seconds(5));
  expect([cost(0, 0, 1, 1), cost(0, 0, 1, 0), cost(2, -3, 1, 1), cost(-3, 3, 2, 0.5)]).toEqual(
    [9, 6, 10.5, 4 + 0.9 + 3.5].map((value) => expect.closeTo(value, 9)),
  );
});

describe('the reason for a value', () => {
  const reason = (value: number, ...holds: readonly Hold[]) => reasonFor(steps(value), { holds });
  const mark = (value: number, counts: 'in' | 'out', light: string) => ({ value, light, counts });

  test('is where the nearest holds on both sides lie, the latest of each', () => {
    expect(reason(1, hold(-3, 'out'), hold(0, 'out'), hold(0, 'in'), hold(2, 'out', 'late'), hold(4, 'out'))).toEqual({
      because: 'between',
      below: mark(0, 'in', 'steady'),
      above: mark(2, 'out', 'late'),
    });
  });

  test('is that it lies beyond all, on either side', () => {
    expect(reason(3, hold(1, 'in'), hold(2, 'out'))).toEqual({ because: 'beyond', of: mark(2, 'out', 'dark'), side: 'above' });
    expect(reason(-1, hold(1, 'in'), hold(0, 'out'))).toEqual({ because: 'beyond', of: mark(0, 'out', 'dark'), side: 'below' });
  });

  test('is to be surer where it was held, and the start where nothing was', () => {
    expect(reason(2, hold(2, 'in'), hold(2, 'out'))).toEqual({ because: 'surer', of: mark(2, 'out', 'dark') });
    expect(reason(2)).toEqual({ because: 'start' });
  });

  test('to start there is what is remembered within a step, of several the weightiest', () => {
    const centre = (at: number, weight: number, of: 'situation' | 'pairing' | null) => ({
      centre: at,
      sd: 1,
      weight,
      ...(of && { from: { at: moment(weight), of } }),
    });
    const start = (value: number, ...centres: ReturnType<typeof centre>[]) => reasonToStart(steps(value), 1, { ...NO_MEMORY, centres });
    expect(start(2, centre(3, 1, 'pairing'))).toEqual({ because: 'remembered', from: { at: 1, of: 'pairing' } });
    expect(start(2, centre(3.01, 1, 'pairing'))).toEqual({ because: 'start' });
    expect(start(2, centre(2, 1, 'pairing'), centre(1, 3, 'situation'), centre(2, 2, 'pairing'))).toMatchObject({ from: { at: 3 } });
    expect(start(2, centre(2, 1, 'situation'), centre(2, 1, 'pairing'))).toMatchObject({ from: { of: 'situation' } });
    expect(start(2, centre(2, 1, null))).toEqual({ because: 'start' });
  });
});

describe('the walk outwards', () => {
  const next = (...holds: readonly Hold[]) => outwardFrom(SCALE, holds);
  test('goes up from the first that held until one fails, then down', () => {
    expect([next(), next(hold(0, 'out')), next(hold(0, 'in')), next(hold(0, 'in'), hold(1, 'in'))]).toEqual([null, null, 1, 2]);
    expect(next(hold(0, 'in'), hold(1, 'out'))).toBe(-1);
    expect(next(hold(0, 'in'), hold(1, 'out'), hold(-1, 'in'), hold(-2, 'out'))).toBeNull();
    expect(next(hold(0, 'in'), hold(1, 'out'), hold(1, 'in'))).toBe(2);
    expect(next(hold(0, 'in'), hold(1, 'in'), hold(1, 'out'))).toBe(-1);
  });

  test('turns at the limit of the scale', () => {
    expect(next(hold(4, 'in'))).toBe(3);
    expect(next(hold(-4, 'in'), hold(-3, 'out'))).toBeNull();
  });
});

describe('the middle of a band', () => {
  const belief = openBelief(SCALE, false, NO_MEMORY);
  test('is the value there, or of two as likely the one nearer to nothing, with the other', () => {
    expect(nearestMiddle(belief, 1)).toEqual({ chosen: 1, other: null });
    // Before any hold the centre is as likely on either side of the middle alone.
    const even = openBelief({ min: steps(-3), max: steps(4), step: 1 }, false, NO_MEMORY);
    expect(nearestMiddle(even, 0.5)).toEqual({ chosen: 0, other: 1 });
    const below = openBelief({ min: steps(-4), max: steps(3), step: 1 }, false, NO_MEMORY);
    expect(nearestMiddle(below, -0.5)).toEqual({ chosen: 0, other: -1 });
  });

  test('is on the side with more belief where there is any', () => {
    expect(nearestMiddle(belief, 1.5)).toEqual({ chosen: 1, other: null });
    expect(nearestMiddle(belief, -1.5)).toEqual({ chosen: -1, other: null });
  });

  test('is told to half a step of the scale', () => {
    expect([roundToHalf(1.2, SCALE), roundToHalf(1.3, SCALE), roundToHalf(-0.74, SCALE), roundToHalf(2.2, { ...SCALE, step: 2 })]).toEqual([1, 1.5, -0.5, 2]);
  });
});
