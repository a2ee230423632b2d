// What the training shows and works out over seeded rounds, kept to seven digits; and its bounds, each below, at and above.
import { describe, expect, test } from 'vitest';
import * as v from 'valibot';
import { seededRandom } from '../../../src/practice/random.ts';
import { climb, levelOf } from '../../../src/practice/training/ladder.ts';
import { isPlain, TrainingRound, type TrainingHold } from '../../../src/practice/training/round.ts';
import { confusionOf, ENOUGH_FOR_LAPSES, lapseOf, reliabilityOf } from '../../../src/practice/training/score.ts';
import { scoreInterval } from '../../../src/practice/training/scoreInterval.ts';
import { courseShown, draw } from '../../../src/practice/training/shown.ts';
import { newRound, roundOf, train } from '../../../src/practice/training/training.ts';
import { moment } from '../../../src/units.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';

const LIGHTS = ['steady', 'late', 'flicker', 'dark'] as const;
const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

/** Rounds of a person who tells so many of a hundred lights as they were. */
function roundsOf(seed: number, count: number, right: number): TrainingRound[] {
  const random = seededRandom(seed);
  const one = <Item>(items: readonly [Item, ...Item[]]): Item => items[Math.floor(random() * items.length)] ?? items[0];
  const hold = (): TrainingHold => {
    const shown = one(LIGHTS);
    return { shown, told: random() * 100 < right ? shown : one([...LIGHTS, 'untold']), level: 1 + Math.floor(random() * 8) };
  };
  return upTo(count).map((at) => ({ at: moment(at), level: 3, holds: upTo(10).map(hold) }));
}
const steadyRound = (missed: number, holds = 10): TrainingRound => ({
  at: moment(0),
  level: 1,
  holds: upTo(holds).map((at) => ({ shown: 'steady', told: at < missed ? 'late' : 'steady', level: 1 })),
});

test('levels and the climb', () => {
  expect(sevenDigits([-1, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map(levelOf).map(Object.values))).toMatchSnapshot('first');
  const climbed = [0, 1, 2, 7, 8].flatMap((level) => [0, 1, 2].flatMap((inARow) => [true, false].map((right) => Object.values(climb({ level, inARow }, right))))); // prettier-ignore
  expect(sevenDigits(climbed)).toMatchSnapshot('second');
});

test('the score interval', () => {
  const trials = [[0, 0], [0, 1], [1, 1], [0, 9], [3, 9], [9, 9], [38, 40], [400, 401], [2, 3]] as const; // prettier-ignore
  expect(sevenDigits(trials.map(([successes, of]) => Object.values(scoreInterval(successes, of))))).toMatchSnapshot();
});

describe('what a hold shows', () => {
  test('over a long run of chance', () => {
    const random = seededRandom(6);
    expect(upTo(200).map((at) => Object.values(draw((at % 8) + 1, random)).join('').slice(0, 9)).join(' ')).toMatchSnapshot('first'); // prettier-ignore
    const courses = upTo(40).map((at) => courseShown({ light: LIGHTS[at % 4] ?? 'dark', level: (at % 8) + 1 }, random));
    expect(courses.map((course) => course.map(({ at, lit }) => `${Number(at.toPrecision(7))}${lit ? '+' : '-'}`).join(' '))).toMatchSnapshot('second');
  });

  test('each kind of light is drawn up to its share, and not at it', () => {
    const lights = [0, 0.3999, 0.4, 0.6499, 0.65, 0.8999, 0.9].map((lot) => draw(1, () => lot).light);
    expect(lights).toEqual(['steady', 'steady', 'late', 'late', 'flicker', 'flicker', 'dark']);
  });

  test('two in five are plain however high the ladder, and none is plainer than the ladder', () => {
    expect([0.3999, 0.4].map((lot) => draw(7, () => lot).level)).toEqual([4, 7]);
    expect(draw(2, () => 0).level).toBe(2);
  });
});

test('whole rounds, as they are told by one who sees and by one who does not', () => {
  const played = (seed: number, level: number, tells: (shown: string, at: number) => TrainingHold['told']) => {
    let state = newRound(seed, level);
    const ladders: string[] = [];
    for (const at of upTo(11)) {
      state = train(state, { did: 'began', at: moment(at * 9000) });
      if ('shown' in state.phase) state = train(state, { did: 'judged', at: moment(at * 9000 + 2000), light: tells(state.phase.shown.light, at) });
      ladders.push(`${state.ladder.level}/${state.ladder.inARow}/${state.holds.length}${state.phase.name.slice(0, 1)}`);
    }
    const holds = roundOf(state, moment(7))?.holds.map(({ shown, told, level }) => `${shown.slice(0, 1)}${told.slice(0, 1)}${level}`) ?? [];
    return [ladders.join(' '), holds.join(' ')];
  };
  const seeing = (shown: string) => LIGHTS.find((light) => light === shown) ?? 'dark';
  expect([1, 2, 3, 40].flatMap((seed) => [played(seed, 6, seeing), played(seed, 4, () => 'untold'), played(seed, 7, () => 'dark')])).toMatchSnapshot();
});

test('steady is told too soon before two seconds, and not at two', () => {
  const began = train(newRound(1, 1), { did: 'began', at: moment(1000) });
  const told = (at: number, light: TrainingHold['told'] = 'steady') => train(began, { did: 'judged', at: moment(at), light });
  expect([told(2999).tooSoon, told(3000).tooSoon, told(1001, 'late').tooSoon]).toEqual([true, false, false]);
  expect([told(2999), told(3000), told(1001, 'late')].map(({ holds }) => holds.length)).toEqual([0, 1, 1]);
  expect(roundOf(began, moment(1))).toBeNull();
});

describe('what rounds say of a person', () => {
  test('over many', () => {
    const people = [100, 97, 90, 60, 10].flatMap((right, seed) => [0, 1, 4, 9, 20].map((count) => roundsOf(seed, count, right)));
    expect(sevenDigits(people.map((rounds) => [...Object.values(reliabilityOf(rounds)).map(Number), lapseOf(rounds) ?? -1]))).toMatchSnapshot('first');
    expect(people.map((rounds) => JSON.stringify(confusionOf(rounds.flatMap(({ holds }) => holds))))).toMatchSnapshot('second');
  });

  test('the last eight rounds count, and not the ninth', () => {
    const good = upTo(8).map(() => steadyRound(0));
    expect([reliabilityOf([steadyRound(10), ...good]).right, reliabilityOf([steadyRound(10), ...good.slice(1)]).right]).toEqual([80, 70]);
  });

  test('forty plain holds are enough for an own share of lapses, and 39 are not', () => {
    expect(ENOUGH_FOR_LAPSES).toBe(40);
    expect(lapseOf([...upTo(3).map(() => steadyRound(0)), steadyRound(0, 9)])).toBeNull();
    expect(lapseOf(upTo(4).map(() => steadyRound(0)))).toBeCloseTo(0.02, 9);
  });

  test('the share lies between half and ten in a hundred', () => {
    expect(lapseOf(upTo(8).map(() => steadyRound(9)))).toBe(0.1);
    const dark = upTo(40).map((): TrainingHold => ({ shown: 'dark', told: 'dark', level: 1 }));
    expect(lapseOf(upTo(8).map(() => ({ ...steadyRound(0), holds: [...steadyRound(0, 40).holds, ...dark] })))).toBe(0.005);
  });

  test('a hold is plain up to the fourth level, and where it is steady or dark on any', () => {
    const plain = (shown: TrainingHold['shown'], level: number) => isPlain({ shown, told: 'untold', level });
    expect([plain('late', 4), plain('late', 5), plain('flicker', 4), plain('flicker', 5), plain('steady', 8), plain('dark', 8)]).toEqual([
      true,
      false,
      true,
      false,
      true,
      true,
    ]);
  });
});

test('a stored round has ten holds on levels one to eight', () => {
  const fits = (level: number, holds: number) => v.safeParse(TrainingRound, { ...steadyRound(0, holds), level }).success;
  expect([fits(0, 10), fits(1, 10), fits(8, 10), fits(9, 10), fits(1.5, 10), fits(3, 9), fits(3, 11)]).toEqual([false, true, true, false, false, false, false]);
});
