// Contract of learning own words out of sweeps: only what was told and stood, only as good as a taught take, few a word.
import { describe, expect, test } from 'vitest';
import type { SweepEvent } from '../../../src/sweep/event.ts';
import { transition } from '../../../src/sweep/transition.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import type { Arrows, Light } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';
import type { WordHeard } from '../../../src/voice/ownWords/ear.ts';
import { became, confirmed, takeFrom, withLearned, withoutLearned, LEARNED_A_WORD, type Said } from '../../../src/voice/ownWords/learning.ts';
import { recogniserOf } from '../../../src/voice/ownWords/recogniser.ts';
import { TakeRecording } from '../../../src/voice/ownWords/recordTake.ts';
import { takeOf, type Take } from '../../../src/voice/ownWords/take.ts';
import { inPhase, later } from '../../sweep/staged.ts';
import { inRoom, say, WORDS } from './spoken.ts';

const by = 'voice' as const;
const began = (at: number): SweepEvent => ({ did: 'began', at: later(at), value: steps(0), by });
const judged = (at: number, light: Light, arrows: Arrows = 'none'): SweepEvent => ({
  did: 'judged',
  at: later(at),
  verdict: { light, arrows },
  by,
  heard: 'x',
});
const amended = (at: number, arrows: Arrows): SweepEvent => ({ did: 'amended', at: later(at), arrows, by, heard: 'x' });
const undid = (at: number): SweepEvent => ({ did: 'undid', at: later(at), by });
const finished = (at: number): SweepEvent => ({ did: 'finished', at: later(at), by });

const take = (word: string, mark = 0): Take => ({ word, noise: Array.from({ length: 8 }, () => mark), frames: Array.from({ length: 64 }, () => mark) });

/** A sweep in which words are told one after another; what of them stood, and what still waits. */
function sweep(...told: readonly (readonly [word: string | null, event: SweepEvent])[]) {
  let state: SweepState = inPhase('dialling');
  let said: readonly Said[] = [];
  const stood: string[] = [];
  const look = (): void => {
    const now = confirmed(said, state.journal);
    stood.push(...now.stood.map(({ word }) => word));
    said = now.waiting;
  };
  for (const [word, event] of told) {
    const before = state.journal;
    state = transition(state, event).state;
    look();
    const became1 = became(before, state.journal);
    if (word !== null && became1) said = [...said, { event: became1, takes: [take(word)] }];
  }
  return { stood, waiting: said.flatMap(({ takes }) => takes.map(({ word }) => word)) };
}

describe('a word that was taken is learned', () => {
  test('when the hold after it was begun and judged, and no sooner', () => {
    const first = [
      ['holding', began(1)],
      ['flicker', judged(2, 'flicker')],
      [null, began(10)],
    ] as const;
    expect(sweep(...first)).toEqual({ stood: [], waiting: ['holding', 'flicker'] });
    expect(sweep(...first, [null, judged(11, 'late')])).toEqual({ stood: ['holding', 'flicker'], waiting: [] });
  });

  test('when the sweep was finished', () => {
    expect(sweep([null, began(1)], ['flicker', judged(2, 'flicker')], ['finish', finished(3)])).toEqual({ stood: ['flicker'], waiting: ['finish'] });
  });

  test('also when its arrows were told beside it', () => {
    const told = sweep([null, began(1)], ['flicker', judged(2, 'flicker')], ['left', amended(3, 'left')], [null, began(10)], [null, judged(11, 'late')]);
    expect(told.stood).toEqual(['flicker', 'left']);
  });
});

describe('a word is never learned', () => {
  test('when what it told was taken back', () => {
    const told = sweep(
      [null, began(1)],
      ['flicker', judged(2, 'flicker')],
      ['undo', undid(3)],
      [null, began(10)],
      ['delayed', judged(11, 'late')],
      [null, finished(12)],
    );
    expect(told).toEqual({ stood: ['delayed'], waiting: [] });
  });

  test('when the next hold was only begun by the press that takes both back', () => {
    const told = sweep([null, began(1)], ['flicker', judged(2, 'flicker')], [null, began(10)], [null, undid(11)], [null, undid(12)], [null, finished(13)]);
    expect(told).toEqual({ stood: [], waiting: [] });
  });

  test('when other arrows than those it told were told after it', () => {
    const told = sweep([null, began(1)], ['left', judged(2, 'flicker', 'left')], ['right', amended(3, 'right')], [null, finished(4)]);
    expect(told.stood).toEqual(['right']);
  });

  test('when it came to nothing, or took something back', () => {
    expect(sweep(['flicker', judged(2, 'flicker')]).waiting).toEqual([]);
    expect(sweep([null, began(1)], ['undo', undid(2)]).waiting).toEqual([]);
  });
});

describe('of what was learned', () => {
  const taught = [1, 2, 3, 4, 5].map((mark) => take('solid', mark));

  test('the newest few of a word stand beside every taught take', () => {
    const learned = [6, 7, 8, 9, 10].map((mark) => take('solid', mark));
    const all = learned.reduce<readonly Take[]>((takes, one) => withLearned(takes, [one]), taught);
    expect(all.slice(0, 5)).toEqual(taught);
    expect(all.slice(5)).toEqual(learned.slice(-LEARNED_A_WORD).map((one) => ({ ...one, learned: true })));
    expect(withLearned(taught, learned)).toEqual(all);
  });

  test('nothing is kept for a word that is not taught', () => {
    expect(withLearned(taught, [take('undo')])).toEqual(taught);
  });

  test('all can be forgotten without what was taught', () => {
    expect(withoutLearned(withLearned(taught, [take('solid', 6)]))).toEqual(taught);
  });
});

describe('a word makes a take', () => {
  const RATE = 16_000;
  const stretchOf = (word: string, seed: number, noise = 0.0005) => {
    const stretch = new TakeRecording(RATE).push(inRoom([say(WORDS[word] ?? [], RATE, seed)], RATE, noise, seed))?.stretch;
    if (!stretch) throw new Error('not heard');
    return stretch;
  };
  const recogniser = recogniserOf(
    ['undo', 'left'].flatMap((word) => [1, 2, 3].map((seed) => takeOf(word, stretchOf(word, seed)))),
    RATE,
  );
  const heard = (said: string, word: string, noise?: number): WordHeard => {
    const stretch = stretchOf(said, 9, noise);
    const recognition = recogniser.recognise(stretch);
    if (!recognition) throw new Error('nothing taught');
    const [began, ended] = [stretch.begins / 100, stretch.ends / 100];
    return { heard: 'word', word, sureness: recognition.sureness, began, ended, at: ended + 0.2, stretch, recognition };
  };

  test('when it is as good as a taught one', () => {
    expect(takeFrom(heard('undo', 'undo'), 0.3)).toEqual(takeOf('undo', stretchOf('undo', 9)));
  });

  test('and none when it is too loud, too faint, or nearer to another word', () => {
    expect(takeFrom(heard('undo', 'undo'), 1)).toBeNull();
    expect(takeFrom(heard('undo', 'undo', 0.03), 0.3)).toBeNull();
    expect(takeFrom(heard('left', 'undo'), 0.3)).toBeNull();
  });
});

test('a take stands with the next hold that was judged, or at the end; what was said is found again in what stands', () => {
  const event = judged(10, 'late');
  const take = { word: 'delayed' } as Take;
  const of = (...later: SweepEvent[]) => {
    const { stood, waiting } = confirmed([{ event, takes: [take] }], [event, ...later]);
    return [stood.length, waiting.length];
  };
  expect([of(), of(began(20)), of(began(20), judged(25, 'steady')), of(judged(25, 'steady')), of(judged(25, 'dark'), began(30))]).toEqual([[0, 1], [0, 1], [1, 0], [0, 1], [0, 1]]); // prettier-ignore
  expect(of({ did: 'finished', at: later(30), by })).toEqual([1, 0]);
  // Its arrows may have been told beside it; other arrows, another light or another moment are another word.
  const found = (now: SweepEvent) => confirmed([{ event, takes: [take] }], [now]).waiting.length;
  expect([found(judged(10, 'late', 'left')), found(judged(10, 'dark')), found(judged(11, 'late')), found(began(10))]).toEqual([1, 0, 0, 0]);
  const left = judged(10, 'late', 'left');
  expect([
    confirmed([{ event: left, takes: [take] }], [left]).waiting.length,
    confirmed([{ event: left, takes: [take] }], [judged(10, 'late', 'right')]).waiting.length,
  ]).toEqual([1, 0]);
});
