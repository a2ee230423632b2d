// Contracts of the training at its limits, with chance that is told.
import { describe, expect, test } from 'vitest';
import { climb, levelOf } from '../../../src/practice/training/ladder.ts';
import { isPlain, type TrainingHold, type TrainingRound } from '../../../src/practice/training/round.ts';
import { lapseOf, reliabilityOf } from '../../../src/practice/training/score.ts';
import { scoreInterval } from '../../../src/practice/training/scoreInterval.ts';
import { courseShown, draw } from '../../../src/practice/training/shown.ts';
import { moment } from '../../../src/units.ts';

const inTurn = (...values: number[]) => {
  let at = 0;
  return () => values[at++] ?? 0.5;
};

describe('what is shown', () => {
  test('is steady four times in ten, late and flickering a quarter each, else dark', () => {
    expect([0, 0.39, 0.4, 0.64, 0.65, 0.89, 0.9, 0.99].map((lot) => draw(8, inTurn(lot, 0.5)).light)).toEqual([
      'steady',
      'steady',
      'late',
      'late',
      'flicker',
      'flicker',
      'dark',
      'dark',
    ]);
  });

  test('is plain four times in ten, however high the ladder stands', () => {
    expect([0.39, 0.41].map((lot) => draw(8, inTurn(0.5, lot)).level)).toEqual([4, 8]);
    expect(draw(2, inTurn(0.5, 0.1)).level).toBe(2);
  });

  const course = (light: 'late' | 'flicker', level: number, ...random: number[]) =>
    courseShown({ light, level }, inTurn(...random)).map(({ at, lit }) => [Math.round(1000 * at) / 1000, lit]);

  test('comes on late, or goes out once or twice, as its level says', () => {
    expect(course('late', 1)).toEqual([[0, false], [1, true]]); // prettier-ignore
    // One gap of half a second, from 0.3 of the 1.5 that are left; two of 0.1, each in its own second.
    expect(course('flicker', 1, 0.4, 0)).toEqual([[0, true], [0.45, false], [0.95, true]]); // prettier-ignore
    expect(course('flicker', 6, 0.5, 1, 0.5)).toEqual([[0, true], [0.72, false], [0.82, true], [1.495, false], [1.595, true]]); // prettier-ignore
  });
});

test('two right in a row climb, one wrong goes down, within eight levels', () => {
  const at = (level: number, inARow: number, right: boolean) => Object.values(climb({ level, inARow }, right));
  expect([at(3, 0, true), at(3, 1, true), at(3, 1, false), at(1, 0, false), at(8, 1, true)]).toEqual([[3, 1], [4, 0], [2, 0], [1, 0], [8, 0]]); // prettier-ignore
  expect([levelOf(1).delay, levelOf(8).gap, levelOf(9)]).toEqual([1, 0.06, { delay: 0.5, gap: 0.15 }]);
});

test('the score interval is that of the published formula', () => {
  // E. B. Wilson 1927: 8 of 10 is 0.4902 to 0.9433 (worked out by hand with z = 1.96).
  expect(scoreInterval(8, 10)).toEqual({ low: expect.closeTo(0.4902, 3), high: expect.closeTo(0.9433, 3) });
  expect([scoreInterval(0, 0), scoreInterval(0, 4).low, scoreInterval(4, 4).high]).toEqual([{ low: 0, high: 1 }, 0, expect.closeTo(1, 9)]);
});

describe('what rounds say', () => {
  const holds = (count: number, shown: TrainingHold['shown'], told: TrainingHold['told'], level = 1): TrainingHold[] =>
    Array.from({ length: count }, () => ({ shown, told, level }));
  const rounds = (...all: TrainingHold[][]): TrainingRound[] => all.map((each, at) => ({ at: moment(at), level: 1, holds: each }));

  test('rests on plain holds: steady, dark, and up to the fourth level', () => {
    expect(
      [...holds(1, 'late', 'late', 4), ...holds(1, 'late', 'late', 5), ...holds(1, 'steady', 'steady', 8), ...holds(1, 'dark', 'dark', 8)].map(isPlain),
    ).toEqual([true, false, true, true]);
    expect(reliabilityOf(rounds([...holds(3, 'late', 'late', 5), ...holds(2, 'late', 'steady', 4)]))).toMatchObject({ right: 0, of: 2 });
  });

  test('rests on the last eight rounds, and is reliable where the lower bound is 0.9', () => {
    const old = holds(10, 'steady', 'late');
    expect(reliabilityOf(rounds(old, ...Array.from({ length: 8 }, () => holds(10, 'steady', 'steady'))))).toMatchObject({ right: 80, of: 80, reached: true });
    expect(reliabilityOf(rounds(old, ...Array.from({ length: 7 }, () => holds(10, 'steady', 'steady'))))).toMatchObject({ right: 70, of: 80, reached: false });
    // All right: 34 of 34 are 0.8985 at least, 35 of 35 0.9011.
    expect([34, 35].map((count) => reliabilityOf(rounds(holds(count, 'dark', 'dark'))).reached)).toEqual([false, true]);
  });

  test('gives a share of lapses from forty plain holds on, the worse of both kinds, in half per cents up to ten', () => {
    expect(lapseOf(rounds(holds(39, 'steady', 'steady')))).toBeNull();
    // 1 / 90 and, with nothing failing shown, 1 / 50.
    expect(lapseOf(rounds(holds(40, 'steady', 'steady')))).toBeCloseTo(0.02, 9);
    // 4 / 80 of the steady ones, 1 / 80 of the others.
    expect(lapseOf(rounds([...holds(3, 'steady', 'late'), ...holds(27, 'steady', 'steady'), ...holds(30, 'dark', 'dark')]))).toBeCloseTo(0.05, 9);
    expect(lapseOf(rounds([...holds(3, 'dark', 'steady'), ...holds(27, 'dark', 'dark'), ...holds(30, 'steady', 'steady')]))).toBeCloseTo(0.05, 9);
    expect(lapseOf(rounds(holds(60, 'dark', 'steady')))).toBe(0.1);
    expect(lapseOf(rounds([...holds(400, 'dark', 'dark'), ...holds(400, 'steady', 'steady')]))).toBe(0.005);
  });
});
