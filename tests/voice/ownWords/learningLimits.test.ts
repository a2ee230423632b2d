// Contract of what is learned at its limits: what words became in the journal, what stands of it, how many takes of a word stay.
import { expect, test } from 'vitest';
import type { SweepEvent } from '../../../src/sweep/event.ts';
import { steps } from '../../../src/units.ts';
import { joinTaught, withoutWord } from '../../../src/voice/ownWords/forgetting.ts';
import { became, confirmed, withLearned, withoutLearned } from '../../../src/voice/ownWords/learning.ts';
import type { Take } from '../../../src/voice/ownWords/take.ts';
import { later } from '../../sweep/staged.ts';

const by = 'voice' as const;
const began = (at: number): SweepEvent => ({ did: 'began', at: later(at), value: steps(0), by });
const judged = (at: number, arrows: 'none' | 'left' | 'right' = 'none', light: 'late' | 'dark' = 'late'): SweepEvent => ({
  did: 'judged',
  at: later(at),
  verdict: { light, arrows },
  by,
  heard: 'x',
});
const finished = (at: number): SweepEvent => ({ did: 'finished', at: later(at), by });
const take = (word: string, mark = 0): Take => ({ word, noise: [mark], frames: [mark] });

test('what was told became the last event, where that is new and nothing was taken back', () => {
  const [a, b, c] = [began(1), judged(2), finished(3)];
  expect([became([], [a]), became([a], [a, b]), became([a, b], [a, c]), became([a], [a, b, c])]).toEqual([a, b, c, c]);
  expect([became([], []), became([a], []), became([a, b], [a, b]), became([a, b, c], [b, a])]).toEqual([null, null, null, null]);
  // The same event although more stand before it.
  expect(became([b], [a, b])).toBeNull();
});

const of = (event: SweepEvent, ...journal: SweepEvent[]): string => {
  const { stood, waiting } = confirmed([{ event, takes: [take('one')] }], journal);
  return `${stood.length} ${waiting.length}`;
};

test('it stands from its own place in the journal on, wherever that is', () => {
  const event = judged(10);
  expect([of(event, event), of(event, event, finished(11)), of(event, began(1), event, finished(11))]).toEqual(['0 1', '1 0', '1 0']);
  expect([of(event, finished(1), event), of(event, began(1), judged(2), event), of(event, began(1), event, judged(12))]).toEqual(['0 1', '0 1', '0 1']);
  expect([of(event, event, began(11)), of(event, event, began(11), judged(12)), of(event, event, judged(11), began(12), judged(13))]).toEqual([
    '0 1',
    '1 0',
    '1 0',
  ]);
  expect(of(event, event, began(11), began(12), judged(13))).toBe('1 0');
});

test('it is gone when its event is, whatever else stands', () => {
  const event = judged(10);
  expect([of(event), of(event, began(10)), of(event, finished(11)), of(event, began(1), judged(11), finished(12))]).toEqual(['0 0', '0 0', '0 0', '0 0']);
  expect([of(event, judged(10, 'left')), of(event, judged(10, 'none', 'dark')), of(judged(10, 'left'), event)]).toEqual(['0 1', '0 0', '0 0']);
  expect([of(judged(10, 'left'), judged(10, 'right')), of(judged(10, 'left'), judged(10, 'left', 'dark')), of(began(10), began(10))]).toEqual([
    '0 0',
    '0 0',
    '0 1',
  ]);
});

test('two learned takes of each word stay, the newest, in their order; what is taught stays whole', () => {
  const taught = [take('one', 1), take('two', 2), take('one', 3)];
  const marks = (takes: readonly Take[]) => takes.map(({ word, noise, learned }) => `${word} ${noise[0]}${learned ? ' learned' : ''}`);
  const once = withLearned(taught, [take('one', 4), take('two', 5), take('three', 6)]);
  expect(marks(once)).toEqual(['one 1', 'two 2', 'one 3', 'one 4 learned', 'two 5 learned']);
  const more = withLearned(once, [take('one', 7), take('one', 8), take('two', 9)]);
  expect(marks(more)).toEqual(['one 1', 'two 2', 'one 3', 'two 5 learned', 'one 7 learned', 'one 8 learned', 'two 9 learned']);
  expect(withoutLearned(more)).toEqual(taught);
});

test('a word that only was learned is not taught any more', () => {
  expect(withLearned([{ ...take('one'), learned: true }, take('two')], [take('one', 1)])).toHaveLength(2);
});

test('of words that are brought in those stay out that are there, and a word is left out whole', () => {
  const [first, second] = [
    [take('one', 1), take('two', 2)],
    [take('two', 3), take('three', 4), take('three', 5)],
  ];
  expect(joinTaught(first, second)).toEqual([first[0], first[1], second[1], second[2]]);
  expect(withoutWord([...first, ...second], 'two')).toEqual([first[0], second[1], second[2]]);
});
