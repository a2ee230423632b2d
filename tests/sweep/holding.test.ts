import { expect, test } from 'vitest';
import type { Effect } from '../../src/sweep/effect.ts';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { transition } from '../../src/sweep/transition.ts';
import type { Light, Verdict } from '../../src/sweep/verdict.ts';
import { seconds, steps } from '../../src/units.ts';
import { after, begin, inPhase, later } from './staged.ts';

const STEADY: Verdict = { light: 'steady', arrows: 'none' };
const judged = (light: Light, second: number): SweepEvent => ({
  did: 'judged',
  at: later(second),
  verdict: { light, arrows: 'none' },
  by: 'key',
  heard: null,
});
const says = (effects: readonly Effect[]): unknown[] => effects.flatMap((effect) => (effect.do === 'say' ? [effect.prompt] : []));
const keeps = (effects: readonly Effect[]): boolean => effects[0]?.do === 'keep';

test('a half-press begins the hold: kept first, then the begin tone and the hold time', () => {
  const { state, effects } = transition(inPhase('dialling'), { did: 'began', at: later(10), value: steps(0), by: 'key' });
  expect(state.phase).toMatchObject({ name: 'holding', since: later(10) });
  expect(effects.map((effect) => effect.do)).toEqual(['keep', 'clear alarms', 'sound', 'wake']);
});

test('"steady" before the hold time has run is refused with the seconds left, and the hold goes on', () => {
  const before = inPhase('holding');
  const { state, effects } = transition(before, judged('steady', 12));
  expect(state).toBe(before);
  expect(says(effects)).toEqual([{ say: 'too early', left: 3 }]);
  expect(keeps(effects)).toBe(false);
});

test('"steady" is credited once the hold time has run, with or without the end tone', () => {
  expect(transition(inPhase('holding'), judged('steady', 15)).state.holds.at(-1)?.verdict).toEqual(STEADY);
  expect(transition(inPhase('judging'), judged('steady', 16)).state.holds.at(-1)?.verdict).toEqual(STEADY);
});

test.each(['late', 'flicker', 'dark', 'untold'] as const)('a light that was %s ends the hold at once', (light) => {
  const { state, effects } = transition(inPhase('holding'), judged(light, 11));
  expect(state.holds.at(-1)).toMatchObject({ value: 0, verdict: { light }, began: later(10), ended: later(11) });
  expect(state.phase.name).toBe('dialling');
  expect(keeps(effects)).toBe(true);
});

test('a steady light with one arrow is out, and may end the hold early', () => {
  const left: SweepEvent = { did: 'judged', at: later(12), verdict: { light: 'steady', arrows: 'left' }, by: 'key', heard: null };
  expect(transition(inPhase('holding'), left).state.holds.at(-1)?.reading).toEqual({ counts: 'out', grade: 'near', side: 'below' });
});

test('a timer that rings before the hold time is over changes nothing', () => {
  const before = inPhase('holding');
  expect(transition(before, { did: 'ran', at: later(14) })).toEqual({ state: before, effects: [] });
});

test('after the end tone silence is asked about once, then the hold itself is asked for again', () => {
  const asked = transition(inPhase('judging'), { did: 'unanswered', at: later(21) });
  expect(says(asked.effects)).toEqual([{ say: 'did it hold', value: 0 }]);
  const again = transition(asked.state, { did: 'unanswered', at: later(27) });
  expect(says(again.effects)).toEqual([{ say: 'hold again', value: 0, why: 'unanswered' }]);
  expect(again.state.phase).toMatchObject({ name: 'dialling', next: { value: 0 } });
  expect(again.state.holds).toEqual([]);
});

test('a hold that was cut off does not count, and the same value is asked for again', () => {
  for (const phase of ['holding', 'judging'] as const) {
    const { state } = transition(inPhase(phase), { did: 'cut off', at: later(100) });
    expect(state.phase).toMatchObject({ name: 'dialling', next: { value: 0 } });
    expect(state.holds).toEqual([]);
  }
});

test('a verdict without a hold is refused and says to hold first', () => {
  const before = inPhase('dialling');
  const { state, effects } = transition(before, judged('flicker', 3));
  expect(state).toBe(before);
  expect(says(effects)).toEqual([{ say: 'not now', why: 'hold first' }]);
});

test('a value off the scale is refused, whether it is held or set', () => {
  const before = inPhase('dialling');
  for (const did of ['began', 'chose'] as const) {
    const { state, effects } = transition(before, { did, at: later(3), value: steps(9), by: 'key' });
    expect(state).toBe(before);
    expect(says(effects)).toEqual([{ say: 'not now', why: 'off the scale' }]);
  }
});

test('with a counted pace the hold is counted in when the time to dial is over', () => {
  const counted = inPhase('dialling', { manner: { care: 'standard', order: 'fewest', holdTime: seconds(5), pace: { set: 'counted', toDial: seconds(6) } } });
  const { effects } = transition(after(begin(counted, 10), { did: 'ran', at: later(15) }), judged('steady', 16));
  expect(effects.filter((effect) => effect.do === 'sound' && effect.tone === 'count')).toHaveLength(3);
  expect(effects.at(-1)).toEqual({ do: 'wake', alarm: 'dial', after: 6 });
});

test('a timer may ring 0.05 seconds early, and a verdict come so early; after the end tone it counts whenever it was said', () => {
  expect([14.94, 14.95].map((second) => transition(inPhase('holding'), { did: 'ran', at: later(second) }).state.phase.name)).toEqual(['holding', 'judging']);
  expect([14.94, 14.95].map((second) => transition(inPhase('holding'), judged('steady', second)).state.holds.length)).toEqual([0, 1]);
  expect(transition(inPhase('judging'), judged('steady', 14)).state.holds).toHaveLength(1);
});

test('a value that a person sets themselves is held for that reason, the suggested one for its own', () => {
  const before = inPhase('dialling');
  const held = (value: number) => transition(before, { did: 'began', at: later(10), value: steps(value), by: 'key' }).state.phase;
  expect(held(3)).toMatchObject({ name: 'holding', next: { value: 3, reason: { because: 'yours' } } });
  expect(held(0)).toMatchObject({ name: 'holding', next: { value: 0, reason: { because: 'start' } } });
});
