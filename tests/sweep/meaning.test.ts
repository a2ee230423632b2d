// Contract of the inputs: what each word, key and press comes to in every phase, and that whatever is offered is taken.
import { describe, expect, test } from 'vitest';
import { inputOf, lightWith, meaning } from '../../src/sweep/meaning.ts';
import type { Input } from '../../src/sweep/inputs.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { transition } from '../../src/sweep/transition.ts';
import { understood } from '../../src/sweep/understood.ts';
import { steps } from '../../src/units.ts';
import { BAND } from '../bandOutcome.ts';
import { after, begin, inPhase, later } from './staged.ts';

const NOW = later(1000);
const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'finished'] as const;

/** The phase after the input, and whether every event it became was taken. */
function told(state: SweepState, input: Input, now = NOW) {
  const meant = meaning(input, state, now);
  let refused = meant.means === 'not now' || meant.means === 'nothing';
  for (const event of meant.means === 'events' ? meant.events : []) {
    const step = transition(state, event);
    refused ||= !step.effects.some((effect) => effect.do === 'keep');
    state = step.state;
  }
  return { state, refused, meant };
}

const press = (kind: 'short' | 'double' | 'long', during: SweepState['phase']['name'], downAt = NOW): Input => ({
  told: 'press',
  press: kind,
  during,
  downAt,
});

describe('what is offered is taken', () => {
  test.each(PHASES)('every word understood in %s is taken', (phase) => {
    const state = inPhase(phase);
    for (const word of understood(state).words) {
      if (word === 'undo') continue;
      const input: Input = word === 'set' ? { told: 'set', value: steps(7), by: 'key', heard: null } : inputOf(word, 'key');
      expect({ word, refused: told(state, input).refused }).toEqual({ word, refused: false });
    }
  });

  test.each(PHASES)('every press with a meaning in %s is taken', (phase) => {
    const state = inPhase(phase);
    for (const { press: kind } of understood(state).presses) {
      if (kind === 'kept, double') continue;
      expect({ kind, refused: told(state, press(kind, phase)).refused }).toEqual({ kind, refused: false });
    }
  });
});

describe('lights and arrows', () => {
  test('a light with an arrow is one verdict', () => {
    const { state } = told(inPhase('holding'), lightWith('flicker', 'left', 'voice', 'flicker left'), later(12));
    expect(state.holds.at(-1)).toMatchObject({ verdict: { light: 'flicker', arrows: 'left' }, by: 'voice', heard: 'flicker left' });
  });

  test('one arrow alone during a hold says that it failed, without saying how', () => {
    const { state } = told(inPhase('holding'), inputOf('left', 'key'), later(12));
    expect(state.holds.at(-1)?.verdict).toEqual({ light: 'untold', arrows: 'left' });
  });

  test('both arrows evenly during a hold is no failure: it is refused until the time has run', () => {
    const { state, refused } = told(inPhase('holding'), inputOf('balanced', 'key'), later(12));
    expect(refused).toBe(true);
    expect(state.phase.name).toBe('holding');
  });

  test('an arrow alone after the end tone belongs to a steady light', () => {
    const { state } = told(inPhase('judging'), inputOf('right', 'key'), later(16));
    expect(state.holds.at(-1)?.verdict).toEqual({ light: 'steady', arrows: 'right' });
  });

  test('an arrow right after a verdict completes it', () => {
    const { state: judged } = told(inPhase('holding'), inputOf('flicker', 'key'), later(12));
    expect(understood(judged).words).toContain('left');
    const { state } = told(judged, inputOf('left', 'key'), later(13));
    expect(state.holds).toHaveLength(1);
    expect(state.holds.at(-1)?.verdict).toEqual({ light: 'flicker', arrows: 'left' });
  });

  test('arrows on a body without arrows are refused and never understood', () => {
    const plain = inPhase('holding', { arrows: 'absent' });
    expect(meaning(inputOf('left', 'key'), plain, NOW)).toEqual({ means: 'not now', why: 'no arrows' });
    expect(understood(plain).words).not.toContain('left');
  });
});

describe('one switch', () => {
  test('in dialling a short press begins the hold at the down itself', () => {
    const { state } = told(inPhase('dialling'), press('short', 'dialling', later(20)), later(20));
    expect(state.phase).toMatchObject({ name: 'holding', since: later(20) });
  });

  test('the switch kept down from the beginning of its hold takes nothing back and books nothing: it is asked about', () => {
    const judged = told(begin(inPhase('dialling'), 10), inputOf('flicker', 'key'), later(12)).state;
    const begun = told(judged, press('short', 'dialling', later(20)), later(20)).state;
    const { state, meant } = told(begun, press('long', 'dialling', later(20)), later(20.6));
    expect(meant).toEqual({ means: 'asked', about: { hold: later(20), about: 'kept' } });
    expect(state).toBe(begun);
  });

  test('after that two presses take back the hold and what came before it, and without anything before they still grade', () => {
    const judged = told(begin(inPhase('dialling'), 10), inputOf('flicker', 'key'), later(12)).state;
    const begun = told(judged, press('short', 'dialling', later(20)), later(20)).state;
    const kept = { hold: later(20), about: 'kept' } as const;
    const double = press('double', 'holding', later(21.5));
    expect(meaning(double, begun, later(22), kept)).toMatchObject({ events: [{ did: 'undid' }, { did: 'undid' }] });
    expect(meaning(double, begun, later(22))).toMatchObject({ events: [{ verdict: { light: 'late' } }] });
    expect(meaning(double, begun, later(22), { ...kept, hold: later(10) })).toMatchObject({ events: [{ verdict: { light: 'late' } }] });
    const first = begin(inPhase('dialling'), 20);
    expect(meaning(double, first, later(22), kept)).toMatchObject({ events: [{ verdict: { light: 'late' } }] });
  });

  test.each(['short', 'double', 'long'] as const)('a %s press within 0.7 s of the beginning of a hold is asked about, and counts from then on', (kind) => {
    const holding = inPhase('holding');
    for (const since of [0, 0.3, 0.69]) {
      expect(meaning(press(kind, 'holding', later(10 + since)), holding, later(12))).toEqual({ means: 'asked', about: { hold: later(10), about: kind } });
    }
    const asked = { hold: later(10), about: kind };
    for (const since of [0.7, 2, 4.9]) {
      expect(meaning(press(kind, 'holding', later(10 + since)), holding, later(16), asked)).toMatchObject({
        means: 'events',
        events: [{ did: 'judged', at: later(10 + since) }],
      });
    }
  });

  test('a light told at once by its own word or key is taken: nothing else can be meant by it', () => {
    expect(meaning(inputOf('flicker', 'key'), inPhase('holding'), later(10.1))).toMatchObject({ means: 'events' });
  });

  test.each(PHASES.filter((phase) => phase !== 'finished'))('undo is offered in %s only where there is something to take back', (phase) => {
    const state = inPhase(phase);
    const { state: after, refused } = told(state, inputOf('undo', 'key'));
    const { words, presses } = understood(state);
    expect(words.includes('undo')).toBe(!refused);
    expect(after === state).toBe(refused);
    expect(presses.some(({ means }) => means === 'undo')).toBe(phase === 'dialling' && !refused);
  });

  test('in dialling undo by the switch is offered as soon as there is a verdict to take back', () => {
    const judged = told(begin(inPhase('dialling'), 10), inputOf('flicker', 'key'), later(12)).state;
    expect(understood(judged).presses).toContainEqual({ press: 'kept, double', means: 'undo' });
  });

  test.each([
    ['short', 'flicker'],
    ['double', 'late'],
    ['long', 'dark'],
  ] as const)('during a hold a %s press says %s, and the hold ended at the first down', (kind, light) => {
    const { state } = told(inPhase('holding'), press(kind, 'holding', later(12)), later(12.6));
    expect(state.holds.at(-1)).toMatchObject({ verdict: { light, arrows: 'none' }, ended: later(12) });
  });

  test('a press made in the last instant of a hold still judges it after the end tone', () => {
    const { state } = told(inPhase('judging'), press('short', 'holding', later(14.9)), later(15.3));
    expect(state.holds.at(-1)?.verdict.light).toBe('flicker');
  });

  test('after the end tone a short press says that it held, a long one that it failed', () => {
    expect(told(inPhase('judging'), press('short', 'judging', later(16))).state.holds.at(-1)?.verdict.light).toBe('steady');
    expect(told(inPhase('judging'), press('long', 'judging', later(16))).state.holds.at(-1)?.verdict.light).toBe('untold');
  });

  test('when the finish is offered a short press accepts it and a long one goes on', () => {
    expect(told(inPhase('offered'), press('short', 'offered')).state.phase.name).toBe('finished');
    expect(told(inPhase('offered'), press('long', 'offered')).state.phase.name).toBe('dialling');
  });

  test('two presses say that live view shows the focus shifted, and practice, which has none, does not know them', () => {
    const offered = inPhase('offered');
    expect(told(offered, press('double', 'offered')).state).toMatchObject({ phase: { name: 'dialling' }, holds: [], spent: offered.holds });
    const practising = { ...offered, plan: { ...offered.plan, practice: { seed: 1 } } };
    expect(understood(practising).presses.map(({ press: kind }) => kind)).toEqual(['short', 'long']);
    expect(meaning(press('double', 'offered'), practising, later(20))).toEqual({ means: 'nothing' });
  });

  test('a press whose hold is over means nothing', () => {
    expect(meaning(press('short', 'holding', later(12)), inPhase('dialling'), later(13))).toEqual({ means: 'nothing' });
    const nextHold = begin(inPhase('dialling'), 20);
    expect(meaning(press('double', 'holding', later(12)), nextHold, later(21))).toEqual({ means: 'nothing' });
  });

  test('at a result a press says it again, two presses want the next lens, and a long one marks the value as entered', () => {
    const over = { ...inPhase('finished'), phase: { name: 'finished', outcome: BAND, at: NOW } } as const;
    for (const [kind, means] of [
      ['short', 'repeat'],
      ['double', 'next lens'],
      ['long', 'entered'],
    ] as const) {
      expect(meaning(press(kind, 'finished'), over, NOW)).toEqual({ means });
    }
    expect(understood(over).words).toEqual(['entered', 'next', 'undo', 'repeat', 'far view', 'help']);
  });

  test('nothing can be marked in practice, where nothing held, or while a trouble stands', () => {
    const over = { ...inPhase('finished'), phase: { name: 'finished', outcome: BAND, at: NOW } } as const;
    const trouble = { trouble: 'hole in the band', bayesFactor: 300, from: steps(3), to: steps(4) } as const;
    for (const state of [
      { ...over, plan: { ...over.plan, practice: { seed: 1 } } },
      { ...over, phase: { ...over.phase, outcome: { found: 'nothing', tally: BAND.tally } } },
      { ...over, troubles: [trouble] },
    ] as const) {
      expect(understood(state).words).toEqual(['next', 'undo', 'repeat', 'far view', 'help']);
      expect(understood(state).presses.map(({ press: kind }) => kind)).toEqual(['short', 'double']);
      expect(meaning({ told: 'entered', by: 'key', heard: null }, state, NOW)).toEqual({ means: 'not now', why: 'nothing to enter' });
      expect(meaning(press('long', 'finished'), state, NOW)).toEqual({ means: 'nothing' });
    }
    expect(meaning({ told: 'entered', by: 'key', heard: null }, inPhase('dialling'), NOW)).toEqual({ means: 'not now', why: 'not offered' });
  });
});

test('accept is taken only where a finish is offered; finish is taken at any time', () => {
  expect(meaning(inputOf('accept', 'key'), inPhase('dialling'), NOW)).toEqual({ means: 'not now', why: 'not offered' });
  expect(told(inPhase('holding'), inputOf('finish', 'key')).state.phase.name).toBe('finished');
});

test('the focus question is answered with same and shifted', () => {
  const checking = inPhase('checking');
  expect(told(checking, inputOf('same', 'voice')).state.holds.length).toBe(checking.holds.length);
  expect(told(checking, inputOf('shifted', 'voice')).state.holds).toEqual([]);
});

test('a value of the person’s own is held even though another was suggested', () => {
  const { state } = told(inPhase('dialling'), { told: 'set', value: steps(-5), by: 'voice', heard: 'set minus five' });
  expect(after(state, { did: 'began', at: NOW, value: steps(-5), by: 'key' }).phase).toMatchObject({ name: 'holding' });
});
