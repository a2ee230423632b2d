// What is so exactly at the limits of when it is enough, of the two ends, of the outcome and of the other stories (each limit: common
// practice, no source), on beliefs that are laid by hand so that a chance is the limit to the last digit.
import { describe, expect, test } from 'vitest';
import { chancesOfIn, likeliestIn, modelOf } from '../../../src/sweep/belief/belief.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import { wereExpected } from '../../../src/sweep/end/drift.ts';
import { endsOf } from '../../../src/sweep/end/ends.ts';
import { nearestMiddle, outcomeOf, roundToHalf } from '../../../src/sweep/end/outcome.ts';
import { believed, doubtedValues, type Timed, type Weighed } from '../../../src/sweep/end/story.ts';
import { wasSurprising, type Hold } from '../../../src/sweep/hold.ts';
import { seconds, steps } from '../../../src/units.ts';
import { believing, believingOn, held } from './laid.ts';

const ALL = held([3, 'in'], [4, 'out'], [-3, 'in'], [-4, 'out']);

describe('exactly at its limit', () => {
  test('nine tenths of belief in a band past the scale is enough, on either side', () => {
    expect(readiness(believing([8.5, 10, 0.9], [2, 6, 0.1]), [], 'quick')).toMatchObject({ as: 'beyond the scale', side: 'above' });
    expect(readiness(believing([-10, -8.5, 0.9], [-6, -2, 0.1]), [], 'quick')).toMatchObject({ as: 'beyond the scale', side: 'below' });
    // A band whose edge is the limit itself is not past it.
    expect(readiness(believing([-10, -8, 1]), [], 'quick')).not.toMatchObject({ as: 'beyond the scale' });
  });

  test('a centre believed by 0.95 is sure', () => {
    expect(readiness(believing([-3.5, 3.5, 0.95], [2.5, 9.5, 0.05]), ALL, 'quick')).toMatchObject({ ready: true, as: 'band' });
  });

  test('an end that nine tenths put there is settled, and one that nine tenths put past the limit is past', () => {
    expect(endsOf(believing([-3.5, 3.5, 0.9], [-3.5, 2, 0.1]), ALL)?.high.known).toBe('settled');
    expect(endsOf(believing([2, 9.5, 0.9], [2, 8, 0.1]), held([8, 'in']))?.high).toEqual({ known: 'past', last: 8 });
    expect(endsOf(believing([-9.5, -2, 0.9], [-8, -2, 0.1]), held([-8, 'in']))?.low).toEqual({ known: 'past', last: -8 });
  });

  test('a band that lies past one limit by half is looked for longer', () => {
    const out = held(...Array.from({ length: 12 }, (_, at) => [at % 7, 'out'] as const));
    const leaning = believing([8.5, 9, 0.5], [5, 5.5, 0.25], [-5, -4.5, 0.25]);
    expect(chancesOfIn(leaning).every((chance) => chance < 0.25)).toBe(true);
    expect(readiness(leaning, out, 'standard').ready).toBe(false);
    const down = believing([-9, -8.5, 0.5], [5, 5.5, 0.25], [-5, -4.5, 0.25]);
    expect(readiness(down, out, 'standard').ready).toBe(false);
  });

  test('four failures of the likeliest value are time and again, three are not', () => {
    const narrow = believing([0, 0.5, 0.96], [-6, -5.5, 0.04]);
    const { value, chance } = likeliestIn(narrow);
    expect(chance).toBeGreaterThan(0.25);
    const out = (there: number) => held(...Array.from({ length: 12 }, (_, at) => [at < there ? value : 7, 'out'] as const));
    expect([readiness(narrow, out(4), 'standard'), readiness(narrow, out(3), 'standard')]).toMatchObject([{ as: 'nothing held' }, { ready: false }]);
  });

  test('belief that prefers one middle value by 0.02 prefers none', () => {
    expect(nearestMiddle(believing([-3, 4, 0.98], [-2, 4, 0.02]), 0.5)).toEqual({ chosen: 0, other: 1 });
    expect(nearestMiddle(believing([-3, 4, 0.97], [-2, 4, 0.03]), 0.5)).toEqual({ chosen: 1, other: null });
    expect(nearestMiddle(believing([-3, 4, 0.97], [-4, 4, 0.03]), 0.5)).toEqual({ chosen: 0, other: null });
  });

  test('of two middle values as far from zero, the upper one is chosen', () => {
    const odd = modelOf({ min: steps(-7), max: steps(7), step: 2 }, false);
    expect(nearestMiddle(believingOn(odd, [-4, 4, 1]), 0)).toEqual({ chosen: 1, other: -1 });
    expect(nearestMiddle(believingOn(odd, [-4, 4, 1]), 1)).toEqual({ chosen: 1, other: null });
    // Beyond the last value there is no other middle.
    expect(nearestMiddle(believingOn(odd, [-4, 4, 1]), 7.5)).toEqual({ chosen: 7, other: null });
  });

  test('a reading of 0.02 does not surprise, and one of 0.2 was to be expected', () => {
    expect([0.0199, 0.02].map((predictive) => wasSurprising({ predictive } as Hold))).toEqual([true, false]);
    expect([0.1999, 0.2].map((predictive) => wereExpected([{ predictive: 1 }, { predictive }]))).toEqual([false, true]);
    expect(wereExpected([])).toBe(true);
  });

  test('a story is believed at odds of twenty', () => {
    const story = (bayesFactor: number) => ({ story: { is: 'play', size: 1 }, bayesFactor }) as Weighed;
    expect(believed([story(20), story(30)])?.bayesFactor).toBe(20);
    expect([believed([story(19.99)]), believed([])]).toEqual([null, null]);
  });
});

test('values of misjudged holds are in doubt once each, unless one of them was held again after the last', () => {
  const holds = [1, 2, 3, 2, 4, 3].map((value) => ({ value: steps(value) })) as unknown as Timed[];
  expect(doubtedValues(holds, { is: 'misjudged', from: 1, to: 3 })).toEqual([2]);
  expect(doubtedValues(holds, { is: 'misjudged', from: 0, to: 1 })).toEqual([1]);
  expect(doubtedValues(holds, { is: 'misjudged', from: 3, to: 5 })).toEqual([2, 4, 3]);
});

test('a number is rounded to half a step of the scale', () => {
  const scale = (step: number) => ({ min: steps(-8), max: steps(8), step });
  expect([0.2, 0.25, 0.6, 0.75, -1.3].map((value) => roundToHalf(value, scale(1)))).toEqual([0, 0.5, 0.5, 1, -1.5]);
  expect([0.4, 0.6, 3.4].map((value) => roundToHalf(value, scale(2)))).toEqual([0, 1, 3]);
});

describe('the outcome', () => {
  const tally = { holds: 4, seconds: seconds(60) };

  test('of a band past both limits has no visible end, and of one past either the end that can be seen', () => {
    expect(outcomeOf(believing([-9.5, 9.5, 1]), held([8, 'in'], [-8, 'in']), tally)).toMatchObject({ found: 'past the limit', side: 'both', visible: null });
    expect(outcomeOf(believing([2.5, 9.5, 1]), held([8, 'in'], [3, 'in'], [2, 'out']), tally)).toMatchObject({ side: 'high', visible: 3, bound: 5.5 });
    expect(outcomeOf(believing([-9.5, -2.5, 1]), held([-8, 'in'], [-3, 'in']), tally)).toMatchObject({ side: 'low', visible: -3, bound: -5.5 });
  });

  test('is nothing where every hold failed, and where nothing was held', () => {
    expect(outcomeOf(believing([-3.5, 3.5, 1]), held([0, 'out']), tally).found).toBe('nothing');
    expect(outcomeOf(believing([-3.5, 3.5, 1]), [], tally).found).toBe('nothing');
    expect(outcomeOf(believing([-3.5, 3.5, 1]), held([0, 'out'], [1, 'in']), tally).found).toBe('band');
  });

  test('of a band both of whose ends were seen is the middle of what holds, otherwise what is believed', () => {
    const belief = believing([-3.5, 3.5, 0.8], [2.5, 3.5, 0.2]);
    expect(outcomeOf(belief, ALL, tally)).toMatchObject({ centre: 0, chosen: 0, ends: 'seen' });
    expect(outcomeOf(belief, ALL.slice(1), tally)).toMatchObject({ centre: 0.5, ends: 'believed', other: null });
    expect(outcomeOf(belief, ALL.slice(0, 3), tally)).toMatchObject({ centre: 0.5, ends: 'believed', other: null });
  });
});
