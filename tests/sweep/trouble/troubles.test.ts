// Contract: each thing that may be wrong with a practice camera is named from the holds alone, by the reducer, with the
// figures behind the name; a healthy camera is named nothing. Seeds are pinned.
import { describe, expect, test, vi } from 'vitest';
import { cameraOf } from '../../../src/practice/cameras.ts';
import { currentPrompt } from '../../../src/sweep/currentPrompt.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { replay } from '../../../src/sweep/transition.ts';

import { after, later } from '../staged.ts';
import { namesOf, practised } from './practised.ts';

/** Whole sweeps on a machine that has other work. */
vi.setConfig({ testTimeout: 60_000 });

describe.each(['flickers everywhere', 'never lights', 'lights everywhere'] as const)('a light that %s', (oddity) => {
  test.each([2, 5])('is named, and the finish is offered with it said once (seed %i)', (seed) => {
    const sweep = practised(seed, oddity);
    expect(namesOf(sweep)).toEqual([oddity]);
    const [trouble] = sweep.state.troubles;
    // Odds of fifty: a lamp that flickers far out and never goes dark is thinkable, too.
    expect(trouble?.bayesFactor).toBeGreaterThan(50);
    expect(sweep.state.phase.name).toBe('offered');
    const told = sweep.effects.filter((effect) => effect.do === 'say' && 'trouble' in effect.prompt);
    expect(told).toHaveLength(1);
    expect(currentPrompt(sweep.state, later(400))).toMatchObject({ say: 'offer', trouble: { trouble: oddity } });
  });

  test('ends without a band: the light tells no centre', () => {
    const { state } = practised(2, oddity);
    expect(state.phase.name === 'offered' && state.phase.outcome.found).toBe(oddity === 'lights everywhere' ? 'past the limit' : 'nothing');
  });

  test('is named from the journal alone, and no longer once the hold that told it is taken back', () => {
    const { state } = practised(2, oddity);
    expect(replay([...state.journal]).troubles).toEqual(state.troubles);
    const back = after(state, { did: 'undid', at: later(500), by: 'key' });
    expect(back.troubles).toEqual([]);
    expect(back.phase.name).toBe('dialling');
  });
});

test('going on in spite of it is possible, and asks for the next value', () => {
  const { state } = practised(2, 'flickers everywhere');
  expect(after(state, { did: 'went on', at: later(500), by: 'key' }).phase.name).toBe('dialling');
});

test.each([3, 5])('a gap met by a person who steps through the band is named with its values (seed %i)', (seed) => {
  const { low, high } = cameraOf({ seed }, USUAL_SCALE, 'absent');
  const own = Array.from({ length: Math.ceil(high) - Math.floor(low) + 1 }, (_, step) => Math.floor(low) + step);
  const sweep = practised(seed, 'hole in the band', { own });
  expect(namesOf(sweep)).toEqual(['hole in the band']);
  const [hole] = sweep.state.troubles;
  if (hole?.trouble !== 'hole in the band') throw new Error('no gap');
  expect(hole.from).toBeGreaterThan(low);
  expect(hole.to).toBeLessThan(high);
  expect(Math.abs((hole.from + hole.to) / 2 - (low + high) / 2)).toBeLessThan(1.5);
  expect(hole.bayesFactor).toBeGreaterThan(100);
});

test.each([1, 5])('arrows that turn round midway are named, and the lights still find the band (seed %i)', (seed) => {
  const { state } = practised(seed, 'arrows turn round', { arrows: true });
  expect(state.troubles).toMatchObject([{ trouble: 'arrows contradict the lights' }]);
  expect(state.phase.name === 'offered' && state.phase.outcome.found).toBe('band');
});

test.each([3, 4])('a focus that moves is named by the question about it, and stays named after it was seen (seed %i)', (seed) => {
  const { state } = practised(seed, 'focus moves', { looks: false });
  expect(state.phase.name).toBe('checking');
  // Holds that go on as they go by time may tell of a slow drift as well: then both are named, the likelier first.
  const [first, ...others] = state.troubles;
  expect(first).toMatchObject({ trouble: 'focus moved', seen: false });
  expect(others.every(({ trouble }) => trouble === 'band drifts')).toBe(true);
  const fresh = after(state, { did: 'checked', at: later(900), focus: 'moved', by: 'key' });
  expect(fresh.troubles).toMatchObject([{ trouble: 'focus moved', seen: true }]);
  const held = after(
    fresh,
    { did: 'began', at: later(920), value: state.dialled, by: 'key' },
    { did: 'judged', at: later(922), verdict: { light: 'flicker', arrows: 'none' }, by: 'key', heard: null },
  );
  expect(held.troubles).toEqual(fresh.troubles);
});

test.each([2, 3, 4])('a healthy camera is named nothing, with arrows and without (seed %i)', (seed) => {
  expect(namesOf(practised(seed, null))).toEqual([]);
  expect(namesOf(practised(seed, null, { arrows: true }))).toEqual([]);
});
