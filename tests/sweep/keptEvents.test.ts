// What every event does in every phase, as it was: the phase that follows, what is asked of the world, and what joins the journal; also
// where the event makes no sense.
import { describe, expect, test } from 'vitest';
import { chose, cutOff, finished, focusChecked, paused, resumed, skipped, wentOn } from '../../src/sweep/aside.ts';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { began, holdAgain, judged, notNowFor, ran, unanswered } from '../../src/sweep/holding.ts';
import { replanned } from '../../src/sweep/replanned.ts';
import { stagesOf } from '../../src/sweep/replayed.ts';
import type { Phase, SweepState } from '../../src/sweep/state.ts';
import type { Move } from '../../src/sweep/step.ts';
import { timeSpent } from '../../src/sweep/timeSpent.ts';
import { replay, transition } from '../../src/sweep/transition.ts';
import { isUndoable, lastUndoable } from '../../src/sweep/undoable.ts';
import { moment, steps } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';
import { after, inPhase, later, opened } from './staged.ts';

const PHASES: readonly Phase['name'][] = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'turning', 'finished'];

const short = ({ state, effects }: Move): string => {
  const { phase, holds, spent, journal, skipped: passed, dialled, trustedUpTo } = state;
  const next = 'next' in phase ? [phase.next.value, phase.next.reason.because] : [];
  const told = effects.map((effect) => (effect.do === 'say' ? Object.values(effect.prompt).slice(0, 2).map((one) => (typeof one === 'object' ? '' : one)) : effect.do === 'keep' ? 'keep' : effect.do === 'record' ? effect.outcome.found : Object.values(effect))); // prettier-ignore
  return oneLine([phase.name, next, 'asked' in phase ? phase.asked : '', holds.length, spent.length, journal.length, passed, dialled, trustedUpTo, told]);
};

describe.each(PHASES)('while %s', (name) => {
  const state = inPhase(name);
  const value = 'next' in state.phase ? state.phase.next.value : steps(0);
  const by = 'key' as const;

  test('the events of a hold', () => {
    const moves = [
      ...[value, steps(value === 3 ? 2 : 3), steps(9), steps(-9)].map((each) => began(state, { did: 'began', at: later(900), value: each, by })),
      ...[14.9, 14.95, 15, 16].map((second) => ran(state, { did: 'ran', at: later(second) })),
      ...[12, 14.94, 14.95, 15].map((second) => judged(state, { did: 'judged', at: later(second), verdict: { light: 'steady', arrows: 'none' }, by, heard: null })),
      judged(state, { did: 'judged', at: later(11), verdict: { light: 'late', arrows: 'left' }, by, heard: null }),
      unanswered(state, { did: 'unanswered', at: later(21) }),
      unanswered(unanswered(state, { did: 'unanswered', at: later(21) }).state, { did: 'unanswered', at: later(27) }),
      cutOff(state, { did: 'cut off', at: later(30) }),
    ];
    expect([...moves.map(short), notNowFor(state.phase)]).toMatchSnapshot();
  }); // prettier-ignore

  test('what a person does beside them', () => {
    const moves = [
      ...[steps(2), steps(9), steps(-8), steps(8)].map((each) => chose(state, { did: 'chose', at: later(900), value: each, by })),
      skipped(state, { did: 'skipped', at: later(900), by }),
      paused(state, { did: 'paused', at: later(900), by }),
      resumed(state, { did: 'resumed', at: later(900), by }),
      ...(['moved', 'unmoved'] as const).map((focus) => focusChecked(state, { did: 'checked', at: later(900), focus, by })),
      wentOn(state, { did: 'went on', at: later(900), by }),
      finished(state, { did: 'finished', at: later(900), by }),
      transition(state, { did: 'undid', at: later(900), by }),
      transition(state, { did: 'amended', at: later(900), arrows: 'right', by, heard: null }),
      transition({ ...state, plan: { ...state.plan, arrows: 'absent' } }, { did: 'amended', at: later(900), arrows: 'right', by, heard: null }),
    ];
    expect([...moves.map(short), lastUndoable(state), isUndoable(state)]).toMatchSnapshot();
  });
});

test('a hold that is asked for again says why', () => {
  const { phase } = inPhase('holding');
  if (phase.name !== 'holding') throw new Error('no hold');
  expect(short(holdAgain(inPhase('holding'), { did: 'cut off', at: later(30) }, phase, 'cut off'))).toMatchSnapshot();
});

/** Holds as suggested, each dark. */
const dark = (state: SweepState, at: number): readonly SweepEvent[] => [
  { did: 'began', at: later(at), value: 'next' in state.phase ? state.phase.next.value : steps(0), by: 'key' },
  { did: 'judged', at: later(at + 2), verdict: { light: 'dark', arrows: 'none' }, by: 'key', heard: null },
];

test('a journal is replayed stage by stage, with what was taken back, also from a finish', () => {
  const scale = { min: steps(-4), max: steps(4), step: 1 };
  const first = inPhase('dialling', { scale });
  const one = dark(first, 10);
  const two = dark(after(first, ...one), 20);
  const undo = (at: number): SweepEvent => ({ did: 'undid', at: later(at), by: 'key' });
  const finish = (at: number): SweepEvent => ({ did: 'finished', at: later(at), by: 'key' });
  const journals: readonly (readonly SweepEvent[])[] = [
    [],
    [...one, ...two, undo(30), finish(40), finish(41), undo(50), finish(60)],
    [...one, { did: 'amended', at: later(14), arrows: 'left', by: 'key', heard: null }, ...two, undo(31), undo(32), undo(33)],
    [...one.slice(0, 1), undo(15), ...one, { did: 'paused', at: later(40), by: 'key' }, undo(42), { did: 'heard', at: later(43), guesses: [], became: 'other' }],
    [...one, { did: 'skipped', at: later(30), by: 'key' }, undo(34), { did: 'chose', at: later(36), value: steps(4), by: 'key' }, ...dark(first, 40), undo(50), undo(51), undo(52)],
  ]; // prettier-ignore
  const rows = journals.map((journal) => {
    const all = [opened({ scale }), ...journal];
    return oneLine([stagesOf(all).map(({ is, state }) => [is, state.holds.length]), short({ state: replay(all), effects: [] })]);
  });
  expect([stagesOf([]), rows]).toMatchSnapshot('stages');
  // Undo in the middle of a hold begins that hold anew.
  const judging = after(inPhase('judging', { scale }), { did: 'judged', at: later(16), verdict: { light: 'steady', arrows: 'none' }, by: 'key', heard: null });
  expect([undo(20), undo(21), undo(22)].map((event, nth) => short(transition(nth === 0 ? judging : inPhase('judging', { scale }), event)))).toMatchSnapshot(
    'in the middle of a hold',
  );
});

test('an old journal in which holds went on while the focus was in question is read as it was', () => {
  const checking = inPhase('checking');
  const all: SweepEvent[] = [...checking.journal, ...dark(checking, 800)];
  expect(short({ state: replay(all), effects: [] })).toMatchSnapshot();
});

test('a break of more than two minutes counts as none of the time (common practice, no source)', () => {
  const at = (...seconds: readonly number[]) => seconds.map((second) => moment(second * 1000));
  expect([timeSpent(at(0, 120), moment(130_000)), timeSpent(at(0, 120.5), moment(130_000)), timeSpent(at(0), moment(121_000)), timeSpent([], moment(5000))]).toEqual([130, 9.5, 0, 0]);
}); // prettier-ignore

test('a plan that was told more of keeps a hold under way, and a body that has lost its arrows none that told one', () => {
  const holding = inPhase('holding');
  const more = { ...holding.plan, lapse: 0.05 };
  expect(replanned(holding.journal, holding, more)?.state.phase.name).toBe('holding');
  expect(replanned(holding.journal, { ...holding, phase: inPhase('dialling').phase }, more)).toBeNull();
  const checking = inPhase('checking');
  expect(replanned(checking.journal, checking, { ...checking.plan, arrows: 'absent' })).toBeNull();
  expect(replanned(checking.journal, { ...checking, spent: checking.holds.slice(0, 1) }, { ...checking.plan, lapse: 0.04 })).toBeNull();
});
