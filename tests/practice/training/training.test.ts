// Contract of a round of training: ten short holds, judged by the person, shown so that eye and safety are respected.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseOf, type LampCourse } from '../../../src/practice/lamp.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { levelOf } from '../../../src/practice/training/ladder.ts';
import { LAST_LEVEL } from '../../../src/practice/training/levels.ts';
import { courseShown, draw, TRAINING_HOLD } from '../../../src/practice/training/shown.ts';
import { newRound, roundOf, train, type Training } from '../../../src/practice/training/training.ts';
import type { Light } from '../../../src/sweep/verdict.ts';
import { moment, seconds } from '../../../src/units.ts';

const levels = fc.integer({ min: 1, max: LAST_LEVEL });

/** One hold, told as `eye` sees it. */
function held(state: Training, eye: (light: string) => Light, at = 0): Training {
  const began = train(state, { did: 'began', at: moment(at) });
  const { phase } = began;
  if (!('shown' in phase)) throw new Error('No hold began.');
  const ran = train(began, { did: 'ran', at: moment(at + TRAINING_HOLD * 1000) });
  return train(ran, { did: 'judged', at: moment(at + TRAINING_HOLD * 1000 + 300), light: eye(phase.shown.light) });
}

const round = (seed: number, level: number, eye: (light: string) => Light): Training =>
  Array.from({ length: 10 }).reduce<Training>((state) => held(state, eye), newRound(seed, level));

/** Most times the light goes out within any one second. */
function mostFlashes(course: LampCourse): number {
  const outs = course
    .slice(1)
    .filter(({ lit }) => !lit)
    .map(({ at }) => at);
  return Math.max(0, ...outs.map((from) => outs.filter((at) => at >= from && at < from + 1).length));
}

describe('what a training hold shows', () => {
  test('a late light waits as long as its level says, and comes on well within the hold', () => {
    fc.assert(
      fc.property(levels, fc.nat(), (level, seed) => {
        const course = courseShown({ light: 'late', level }, seededRandom(seed));
        expect(course.map(({ at, lit }) => [at, lit])).toEqual([
          [0, false],
          [levelOf(level).delay, true],
        ]);
        expect(levelOf(level).delay).toBeLessThan(TRAINING_HOLD);
      }),
    );
  });

  test('a flickering light goes out once or twice for as long as its level says, and is on at the end', () => {
    fc.assert(
      fc.property(levels, fc.nat(), (level, seed) => {
        const course = courseShown({ light: 'flicker', level }, seededRandom(seed));
        const lengths = course.flatMap(({ at, lit }, index) => (lit ? [] : [(course[index + 1]?.at ?? Infinity) - at]));
        expect([1, 2]).toContain(lengths.length);
        for (const length of lengths) expect(length).toBeCloseTo(levelOf(level).gap, 9);
        expect(course.at(-1)?.lit).toBe(true);
        expect(course.at(-1)?.at).toBeLessThan(TRAINING_HOLD);
      }),
    );
  });

  // WCAG 2.2, success criterion 2.3.1: no more than three flashes in any one second.
  test('neither the trainer nor the practice camera flashes more than three times a second', () => {
    fc.assert(
      fc.property(levels, fc.nat(), fc.integer({ min: 3, max: 15 }), (level, seed, holdTime) => {
        expect(mostFlashes(courseShown({ light: 'flicker', level }, seededRandom(seed)))).toBeLessThanOrEqual(2);
        const camera = courseOf({ light: 'flicker', arrows: 'none' }, seconds(holdTime), seededRandom(seed));
        expect(mostFlashes(camera)).toBeLessThanOrEqual(3);
      }),
    );
  });

  test('every light comes up, steady most often, and some failing ones stay plain however high the ladder', () => {
    const random = seededRandom(5);
    const drawn = Array.from({ length: 4000 }, () => draw(LAST_LEVEL, random));
    const share = (light: string): number => drawn.filter((one) => one.light === light).length / drawn.length;
    expect(share('steady')).toBeCloseTo(0.4, 1);
    expect(share('late')).toBeCloseTo(0.25, 1);
    expect(share('flicker')).toBeCloseTo(0.25, 1);
    expect(share('dark')).toBeGreaterThan(0.07);
    expect(drawn.filter(({ level }) => level < LAST_LEVEL).length).toBeGreaterThan(1200);
  });
});

describe('a round', () => {
  test('a sharp eye climbs, one that calls everything steady goes down, and each is kept as it was told', () => {
    const sharp = round(3, 2, (light) => light as Light);
    const blind = round(3, 2, () => 'steady');
    expect(sharp.ladder.level).toBeGreaterThan(2);
    expect(blind.ladder.level).toBe(1);
    expect(roundOf(sharp, moment(9))).toMatchObject({ at: 9, level: sharp.ladder.level });
    expect(roundOf(sharp, moment(9))?.holds.every(({ shown, told }) => shown === told)).toBe(true);
    expect(roundOf(blind, moment(9))?.holds.every(({ told }) => told === 'steady')).toBe(true);
  });

  test('“steady” before the time has run is refused, and the hold goes on', () => {
    const began = train(newRound(1, 1), { did: 'began', at: moment(0) });
    const early = train(began, { did: 'judged', at: moment(900), light: 'steady' });
    expect(early).toMatchObject({ tooSoon: true, holds: [], phase: { name: 'holding' } });
    expect(train(early, { did: 'ran', at: moment(2000) })).toMatchObject({ tooSoon: false, phase: { name: 'judging' } });
  });

  test('a failing light may be told at any moment of the hold', () => {
    const began = train(newRound(1, 1), { did: 'began', at: moment(0) });
    expect(train(began, { did: 'judged', at: moment(400), light: 'flicker' })).toMatchObject({ holds: [{ told: 'flicker' }], phase: { name: 'dialling' } });
  });

  test('what makes no sense now changes nothing, and a round that is over is not held again', () => {
    const fresh = newRound(1, 1);
    expect(train(fresh, { did: 'ran', at: moment(0) })).toBe(fresh);
    expect(train(fresh, { did: 'judged', at: moment(0), light: 'dark' })).toBe(fresh);
    const over = round(1, 1, () => 'untold');
    expect(over.phase.name).toBe('finished');
    expect(train(over, { did: 'began', at: moment(0) })).toBe(over);
    expect(roundOf(fresh, moment(0))).toBeNull();
  });

  test('the same seed shows the same, another seed something else', () => {
    const shown = (seed: number): string => JSON.stringify(round(seed, 3, () => 'dark').holds);
    expect(shown(4)).toBe(shown(4));
    expect(shown(4)).not.toBe(shown(5));
  });
});
