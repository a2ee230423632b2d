// Contracts of how like a word a sound is, worked out by hand on distances that are told: what is usual for the word, the others beside it, how sure
// that makes.
import { describe, expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { nearestOf } from '../../../src/voice/ownWords/likeness.ts';
import { clearnessOf } from '../../../src/voice/ownWords/noiseMeter.ts';
import { spelledQuestions, wholeQuestion } from '../../../src/voice/ownWords/spelledQuestion.ts';
import { spelledValues } from '../../../src/voice/ownWords/spelledValue.ts';
import { sureness } from '../../../src/voice/ownWords/sureness.ts';
import { Take } from '../../../src/voice/ownWords/take.ts';
import { usualOf } from '../../../src/voice/ownWords/usual.ts';
import type { WordDistance } from '../../../src/voice/ownWords/wordDistance.ts';
import * as v from 'valibot';

const at = (word: string, apart: number, closest: number, worst: number, more: Partial<WordDistance> = {}): WordDistance => ({
  word,
  apart,
  closest,
  worst,
  warped: 0.2,
  carrying: 1,
  ...more,
});
const usual = (word: string, apart: number, closest: number, worst: number, length = 50) => [word, { apart, closest, worst, warped: 0.1, length }] as const;

describe('the nearest word', () => {
  // Usual for "a" is 1 throughout, for "b" 4: half of its logarithm, a factor of 2, is allowed for.
  const known = new Map([usual('a', 1, 1, 1), usual('b', 4, 4, 4), usual('c', 1, 1, 1)]);

  test('is nearest by its distance whole, and half as much row by row, less half of what is usual', () => {
    const order = (...all: WordDistance[]) =>
      nearestOf(all, known, 50)
        ?.words.map(({ word }) => word)
        .join('');
    expect([order(at('a', 2, 2, 2), at('b', 3, 3, 3)), order(at('a', 2, 2, 2), at('b', 5, 5, 5))]).toEqual(['ba', 'ab']);
    // Twice as far whole counts as much as four times row by row.
    expect([order(at('a', 2, 1, 1), at('c', 1, 3.9, 1)), order(at('a', 2, 1, 1), at('c', 1, 4.1, 1))]).toEqual(['ca', 'ac']);
    expect(nearestOf([], known, 50)).toBeNull();
  });

  test('is told against its usual, and against the others', () => {
    const { likeness } = nearestOf([at('c', 8, 2, 16), at('a', 2, 4, 3, { carrying: 0.5 }), at('b', 16, 16, 16)], known, 100)!;
    const log = Math.log(2);
    // "a": (1 log + 2 log / 2) / 1.5; "c": (3 + 0.5) / 1.5; "b": 4 less 1 in both.
    expect(likeness).toEqual({
      apart: expect.closeTo(log, 9),
      closest: expect.closeTo(2 * log, 9),
      length: expect.closeTo(log, 9),
      carrying: expect.closeTo(-log, 9),
      warped: expect.closeTo(0.1, 9),
      lead: expect.closeTo((2 / 1.5 - 3.5 / 1.5) * log, 9),
      closestLead: expect.closeTo(log, 9),
      worstLead: expect.closeTo(Math.log(3) - 3 * log, 9),
      ahead: expect.closeTo((2 / 1.5 - (3.5 / 1.5 + 3) / 2) * log, 9),
    });
  });

  test('alone is as far ahead as words usually are', () => {
    expect(nearestOf([at('a', 1, 1, 1)], known, 50)?.likeness).toMatchObject({ lead: -0.3, closestLead: -0.3, worstLead: -0.3, ahead: -0.3 });
  });
});

describe('what is usual', () => {
  const again = (...apart: number[]) => apart.map((one) => at('x', one, 2 * one, 3 * one, { warped: one / 10 }));

  test('is the mean of what it is for the word and for all', () => {
    const found = usualOf(new Map([['a', again(1, 3)], ['b', again(8)]]), new Map([['a', [40, 60]], ['b', [30]], ['c', [20]]])); // prettier-ignore
    // Of all three 4; "a" by itself 2, "b" 8; "c" has nothing of its own.
    expect(found.get('a')).toEqual({ apart: 3, warped: expect.closeTo(0.3, 9), closest: 6, worst: 9, length: 50 });
    expect([found.get('b')?.apart, found.get('c')?.apart, found.get('c')?.length]).toEqual([6, 4, 20]);
  });

  test('is one where there is nothing to go by', () => {
    expect(usualOf(new Map(), new Map([['a', [40]]])).get('a')).toEqual({ apart: 1, warped: 1, closest: 1, worst: 1, length: 40 });
  });
});

describe('how sure it is', () => {
  const NONE = { apart: 0, closest: 0, length: 0, carrying: 0, warped: 0, lead: 0, closestLead: 0, worstLead: 0, ahead: 0 };

  test('is the less sure of both rules, by their weights', () => {
    expect(sureness(NONE)).toBe(0.15);
    // 0.21 less 9.75 times -0.1, against 0.15 and 24.15 times -0.1.
    expect(sureness({ ...NONE, lead: -0.1 })).toBeCloseTo(0.15 - 2.415, 9);
    expect(sureness({ ...NONE, ahead: -1 })).toBeCloseTo(0.21 + 1.05, 9);
    expect(sureness({ ...NONE, ahead: -1, worstLead: -0.1, closestLead: -0.1 })).toBeCloseTo(0.21 + 1.05 + 0.636 + 1.076, 9);
    expect(sureness({ ...NONE, length: 0.1, warped: 0.1, closest: 0.1, apart: 0.1 })).toBeCloseTo(0.15 - 0.0849 + 0.578 - 0.82 - 0.715 - 0.919, 9);
  });

  test('is never of what carries sound for less than half as long', () => {
    expect([sureness({ ...NONE, carrying: -0.75 }), sureness({ ...NONE, carrying: -0.751 })]).toEqual([0.15, -20]);
  });
});

test('a room is good from 20 dB, and enough from 12', () => {
  const clearness = (power: number) => clearnessOf({ frames: Array.from({ length: 8 }, () => Float32Array.of(power)), noise: Float32Array.of(1) });
  expect([clearness(101.5), clearness(100.5), clearness(16.9), clearness(16.8)]).toEqual(['good', 'enough', 'enough', 'too faint']);
});

test('a take has whole frames, of 8 to 64 bands, at least 80 ms of them', () => {
  const fits = (more: object) =>
    v.safeParse(Take, { word: 'undo', noise: Array.from({ length: 8 }, () => -100), frames: Array.from({ length: 64 }, () => 0), ...more }).success;
  const list = (count: number, value = 0) => Array.from({ length: count }, () => value);
  expect([
    fits({}),
    fits({ frames: list(63) }),
    fits({ frames: list(56) }),
    fits({ noise: list(7), frames: list(56) }),
    fits({ noise: list(64), frames: list(512) }),
    fits({ noise: list(65), frames: list(520) }),
  ]).toEqual([true, false, false, false, true, false]);
  expect([fits({ frames: list(64, -400) }), fits({ frames: list(64, -401) }), fits({ frames: list(64, 200) }), fits({ frames: list(64, 201) })]).toEqual([
    true,
    false,
    true,
    false,
  ]);
  expect([
    fits({ word: '' }),
    fits({ word: 'x'.repeat(80) }),
    fits({ word: 'x'.repeat(81) }),
    fits({ frames: list(20_000) }),
    fits({ frames: list(20_008) }),
  ]).toEqual([false, true, false, true, false]);
});

describe('told word by word', () => {
  const { spelt, wholeText, gaveUp } = spelledValues(ENGLISH_WRITTEN);
  const value = (...words: string[]) => ({ words, last: 10 });

  test('a value is whole with its second digit, or when none has come for 1.6 seconds; given up after twice that without any', () => {
    expect([
      wholeText(value('minus', 'one'), 11.6),
      wholeText(value('minus', 'one'), 11.61),
      wholeText(value('minus', 'one', 'two'), 10),
      wholeText(value('minus'), 99),
    ]).toEqual([null, 'minus one', 'minus one two', null]);
    expect([gaveUp(value('minus'), 13.2), gaveUp(value('minus'), 13.21), gaveUp(value('minus', 'one'), 99)]).toEqual([false, true, false]);
  });

  test('a word belongs to it only in its place', () => {
    const fits = (word: string, ...before: string[]) => spelt(before.length === 0 ? null : value(...before), word, 12)?.words.join(' ') ?? null;
    expect([fits('set'), fits('set', 'set'), fits('minus'), fits('minus', 'set'), fits('plus', 'minus'), fits('one'), fits('one', 'set'), fits('zero', 'set'), fits('zero')]).toEqual(['set', null, 'minus', 'set minus', null, null, null, 'set zero', null]); // prettier-ignore
    expect([
      fits('one', 'minus'),
      fits('two', 'minus', 'one'),
      fits('three', 'minus', 'one', 'two'),
      fits('plus', 'set', 'zero'),
      fits('undo', 'minus'),
    ]).toEqual(['minus one', 'minus one two', null, null, null]);
  });

  test('a question takes twelve digits or names, and is whole after two seconds', () => {
    const { asked, isQuestion } = spelledQuestions(ENGLISH_WRITTEN);
    const many = (count: number) => ({ words: ['look up', ...Array.from({ length: count }, () => 'one')], last: 10 });
    const fits = (before: { words: string[]; last: number } | null, word: string) => asked(before, word, 12, ['orrin']) !== null;
    expect([
      fits(null, 'look up'),
      fits(many(0), 'look up'),
      fits(null, 'one'),
      fits(many(0), 'one'),
      fits(many(0), 'orrin'),
      fits(many(0), 'corvid'),
      fits(many(11), 'one'),
      fits(many(12), 'one'),
    ]).toEqual([true, false, false, true, true, false, true, false]);
    expect([wholeQuestion(many(1), 12), wholeQuestion(many(1), 12.01), isQuestion(many(1)), isQuestion(value('one'))]).toEqual([
      null,
      'look up one',
      true,
      false,
    ]);
  });
});
