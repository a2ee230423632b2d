import * as v from 'valibot';
import { expect, test } from 'vitest';
import { Journal } from '../../../src/sweep/event.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import { stagesOf } from '../../../src/sweep/replayed.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { replay, transition } from '../../../src/sweep/transition.ts';
import { steps } from '../../../src/units.ts';
import { ranWith } from '../noiseFree.ts';
import { after, inPhase, later, opened } from '../staged.ts';

const SCALE = { min: steps(-12), max: steps(12), step: 1 };
const turning = inPhase('turning', { arrows: 'absent', scale: SCALE });
const shifted = (state: SweepState, second = 1): SweepState => after(state, { did: 'checked', at: later(second), focus: 'moved', by: 'voice' });

test('a width transfer begins by asking to turn the focus, and holds nothing before that is done', () => {
  expect(turning.phase).toMatchObject({ name: 'turning', way: 'first', next: { value: 0 } });
  const held = transition(turning, { did: 'began', at: later(1), value: turning.dialled, by: 'key' });
  expect(held.effects).toContainEqual({ do: 'say', prompt: { say: 'not now', why: 'turn first' } });
  expect(held.state).toBe(turning);
  expect(transition(turning, { did: 'checked', at: later(1), focus: 'unmoved', by: 'key' }).state).toBe(turning);
  expect(shifted(turning).phase).toMatchObject({ name: 'dialling', next: { value: 0 } });
});

test('taking back that it was turned asks for it again', () => {
  expect(after(shifted(turning), { did: 'undid', at: later(2), by: 'key' }).phase).toMatchObject({ name: 'turning', way: 'first' });
});

test.each([
  ['less of it runs past the same limit', [2, 14], 'further'],
  ['it lies further past the same limit', [7, 19], 'other way'],
  ['it lies wholly beyond the same limit', [14, 22], 'other way'],
  ['it runs past the other limit', [-18, -6], 'back'],
  ['it lies wholly beyond the other limit', [-22, -14], 'back'],
] as const)('where %s, it says which way to turn and begins afresh', (_, [low, high], way) => {
  const again = ranWith(shifted(turning), low, high);
  expect(again.phase).toMatchObject({ name: 'turning', way });
  const fresh = shifted(again, 500);
  expect(fresh).toMatchObject({ phase: { name: 'dialling' }, holds: [] });
  expect(fresh.spent).toHaveLength(again.holds.length);
  expect(fresh.belief.posterior).toEqual(shifted(turning).belief.posterior);
});

test('the whole band inside the scale is offered with what it gives', () => {
  expect(ranWith(shifted(turning), -5, 4).phase).toMatchObject({ name: 'offered', outcome: { found: 'carried over', visible: 5, centre: 9.5 } });
});

test('its journal is whole in itself: stored, read and added up it gives the same state and the stages a person went through', () => {
  const done = after(ranWith(shifted(turning), -5, 4), { did: 'finished', at: later(900), by: 'key' });
  const first = opened(turning.plan);
  const journal = v.parse(Journal, JSON.parse(JSON.stringify([first, ...done.journal.filter(({ did }) => did !== 'opened')])));
  expect(replay(journal).phase).toEqual(done.phase);
  const stages = stagesOf(journal).map(({ is }) => is);
  expect(stages[0]).toBe('opened');
  expect(stages.filter((is) => is === 'held')).toHaveLength(done.holds.length);
  expect(openSweep(first).effects).toContainEqual({ do: 'say', prompt: { say: 'turn the focus', noted: null, way: 'first', practice: false } });
});
