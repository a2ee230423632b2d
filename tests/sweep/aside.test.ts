import { expect, test } from 'vitest';
import { transition } from '../../src/sweep/transition.ts';
import { steps } from '../../src/units.ts';
import { after, inPhase, later } from './staged.ts';

test('a value the person sets is the next one, and says that it is theirs', () => {
  const { state } = transition(inPhase('dialling'), { did: 'chose', at: later(3), value: steps(5), by: 'pointer' });
  expect(state.phase).toMatchObject({ name: 'dialling', next: { value: 5, reason: { because: 'yours' } } });
});

test('a skipped value is not suggested again before the next verdict', () => {
  const first = inPhase('dialling');
  const { state } = transition(first, { did: 'skipped', at: later(3), by: 'key' });
  expect(state.phase).toMatchObject({ name: 'dialling' });
  expect('next' in state.phase && 'next' in first.phase && state.phase.next.value !== first.phase.next.value).toBe(true);
});

test('a pause drops the hold under way and comes back to its value', () => {
  const paused = after(inPhase('holding'), { did: 'paused', at: later(12), by: 'voice' });
  expect(paused.phase).toMatchObject({ name: 'paused', next: { value: 0 } });
  expect(after(paused, { did: 'resumed', at: later(60), by: 'voice' }).phase).toMatchObject({ name: 'dialling', next: { value: 0 } });
});

test('focus that had not moved keeps the holds and is not asked about again for them', () => {
  const checking = inPhase('checking');
  const state = after(checking, { did: 'checked', at: later(900), focus: 'unmoved', by: 'key' });
  expect(state.holds).toHaveLength(checking.holds.length);
  expect(state.phase.name).not.toBe('checking');
});

test('focus that had moved begins a fresh series, and the old holds no longer count', () => {
  const checking = inPhase('checking');
  const state = after(checking, { did: 'checked', at: later(900), focus: 'moved', by: 'key' });
  expect(state.holds).toEqual([]);
  expect(state.spent).toHaveLength(checking.holds.length);
  expect(state.phase.name).toBe('dialling');
});

test('an offered finish may be accepted or passed over', () => {
  const offered = inPhase('offered');
  expect(after(offered, { did: 'finished', at: later(900), by: 'switch' }).phase.name).toBe('finished');
  expect(after(offered, { did: 'went on', at: later(900), by: 'switch' }).phase.name).toBe('dialling');
});

test('focus seen to have moved before the finish begins a fresh series, and the holds so far are kept apart', () => {
  const offered = inPhase('offered');
  const moved = after(offered, { did: 'checked', at: later(900), focus: 'moved', by: 'key' });
  expect(moved).toMatchObject({ phase: { name: 'dialling' }, holds: [], spent: offered.holds });
  expect(after(offered, { did: 'checked', at: later(900), focus: 'unmoved', by: 'key' }).phase.name).toBe('offered');
});

test('a sweep may be finished before it is offered, and then states how little is known', () => {
  const { state, effects } = transition(inPhase('dialling'), { did: 'finished', at: later(3), by: 'pointer' });
  expect(state.phase).toMatchObject({ name: 'finished', outcome: { found: 'nothing' } });
  expect(effects.map((effect) => effect.do)).toEqual(['keep', 'clear alarms', 'record', 'say']);
});
