// Contract of the score: intervals as published, and no more claimed of a person than their holds bear out.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { TrainingHold, TrainingRound } from '../../../src/practice/training/round.ts';
import { confusionOf, lapseOf, reliabilityOf } from '../../../src/practice/training/score.ts';
import { scoreInterval } from '../../../src/practice/training/scoreInterval.ts';
import { moment } from '../../../src/units.ts';

// Newcombe 1998, Statistics in Medicine 17:857, table I, method 3 (score, without continuity correction); from memory.
// The NIST/SEMATECH handbook, 7.2.4.1, recommends the same formula.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('the score interval of %i out of %i is as published', (successes, of, low, high) => {
  expect(scoreInterval(successes, of).low).toBeCloseTo(low, 4);
  expect(scoreInterval(successes, of).high).toBeCloseTo(high, 4);
});

test('where nothing was tried, nothing is known', () => {
  expect(scoreInterval(0, 0)).toEqual({ low: 0, high: 1 });
});

const hold = (shown: TrainingHold['shown'], told: TrainingHold['told'], level = 2): TrainingHold => ({ shown, told, level });
const tenOf = (...holds: readonly TrainingHold[]): TrainingRound => ({
  at: moment(0),
  level: 2,
  holds: Array.from({ length: 10 }, (_, index) => holds[index % holds.length] ?? hold('steady', 'steady')),
});
const flawless = tenOf(hold('steady', 'steady'), hold('late', 'late'));

test('what was taken for what is counted by kind', () => {
  const counted = confusionOf([
    hold('late', 'steady'),
    hold('late', 'late'),
    hold('flicker', 'late'),
    hold('flicker', 'steady'),
    hold('dark', 'dark'),
    hold('steady', 'flicker'),
    hold('steady', 'steady'),
    hold('late', 'untold'),
  ]);
  expect(counted).toEqual({
    lateAsSteady: { shown: 3, missed: 1 },
    flickerAsSteady: { shown: 2, missed: 1 },
    darkAsSteady: { shown: 1, missed: 0 },
    steadyAsFailing: { shown: 2, missed: 1 },
    wrongKind: { shown: 6, missed: 1 },
    right: 5,
    of: 8,
  });
});

test('over a round of plain lights, as many are told right by the round as by where the person stands', () => {
  const round = tenOf(hold('late', 'flicker'), hold('dark', 'steady'), hold('steady', 'steady'), hold('flicker', 'untold'), hold('steady', 'dark'));
  expect(confusionOf(round.holds).right).toBe(6);
  expect(reliabilityOf([round])).toMatchObject({ right: 6, of: 10 });
});

test('reliability is reached only when the lower bound passes: thirty flawless holds are too few, forty are enough', () => {
  expect(reliabilityOf([flawless, flawless, flawless])).toMatchObject({ right: 30, of: 30, reached: false });
  expect(reliabilityOf([flawless, flawless, flawless, flawless])).toMatchObject({ right: 40, of: 40, reached: true });
  expect(reliabilityOf([])).toMatchObject({ of: 0, reached: false });
});

test('a light that is hard to see does not count against the person, and old rounds no longer count', () => {
  const hard = tenOf(hold('steady', 'steady'), hold('late', 'steady', 8));
  expect(reliabilityOf([hard])).toMatchObject({ right: 5, of: 5 });
  const clumsy = tenOf(hold('steady', 'dark'));
  expect(reliabilityOf([clumsy, ...Array.from({ length: 8 }, () => flawless)])).toMatchObject({ right: 80, of: 80 });
});

test('no share of lapses is named before there are forty plain holds', () => {
  expect(lapseOf([flawless, flawless, flawless])).toBeNull();
  expect(lapseOf([flawless, flawless, flawless, flawless])).not.toBeNull();
});

test('the share of lapses stays between half a per cent and ten, and never falls with one more slip', () => {
  const tens = fc.array(fc.tuple(fc.constantFrom('steady' as const, 'late' as const, 'dark' as const), fc.boolean()), { minLength: 10, maxLength: 10 });
  fc.assert(
    fc.property(fc.array(tens, { minLength: 4, maxLength: 8 }), fc.nat(9), (all, slip) => {
      const roundOf = (drawn: (typeof all)[number]): TrainingRound => ({
        at: moment(0),
        level: 2,
        holds: drawn.map(([shown, right]) => hold(shown, right ? shown : shown === 'steady' ? 'late' : 'steady')),
      });
      const before = lapseOf(all.map(roundOf)) ?? 0;
      expect(before).toBeGreaterThanOrEqual(0.005);
      expect(before).toBeLessThanOrEqual(0.1);
      const worse = all.map((ten, index) => (index === 0 ? ten.map(([shown, right], at) => [shown, right && at !== slip] as const) : ten));
      expect(lapseOf(worse.map((ten) => roundOf([...ten] as (typeof all)[number]))) ?? 0).toBeGreaterThanOrEqual(before);
    }),
  );
});

test('a person who slips in two steady holds of twenty is taken for worse than usual, and a flawless one for better', () => {
  const slipping = [hold('steady', 'steady'), hold('late', 'late')];
  const one = { ...tenOf(...slipping), holds: [...tenOf(...slipping).holds.slice(1), hold('steady', 'flicker')] };
  expect(lapseOf([one, one, flawless, flawless])).toBeGreaterThan(0.03);
  expect(lapseOf(Array.from({ length: 8 }, () => flawless))).toBe(0.01);
});
