// Contract of the question about the focus: where the holds tell about as well of a band that drifts, or that minds the direction of
// turning, it names that one beside the focus, and it says the same when it is repeated.
import { expect, test } from 'vitest';
import { currentPrompt } from '../../src/sweep/currentPrompt.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import type { Verdict } from '../../src/sweep/verdict.ts';
import { moment, steps } from '../../src/units.ts';
import { after, later, opened } from './staged.ts';

const LIGHT: Record<string, Verdict['light']> = { '+': 'steady', l: 'late', f: 'flicker', d: 'dark' };

/** Holds such as `-5f@27`: the value, the light and the second it began at. */
function held(holds: string): SweepState {
  const first = openSweep(opened({ scale: USUAL_SCALE, arrows: 'absent' })).state;
  return holds.split(' ').reduce((state, hold) => {
    const [, value, light, second] = /^(-?\d+)([+lfd])@(\d+)$/.exec(hold) ?? [];
    const began = Number(second);
    const verdict = { light: LIGHT[light ?? ''] ?? 'dark', arrows: 'none' } as const;
    return after(
      state,
      { did: 'began', at: later(began), value: steps(Number(value)), by: 'key' },
      { did: 'ran', at: later(began + 5) },
      { did: 'judged', at: later(began + 5), verdict, by: 'key', heard: null },
    );
  }, first);
}

test('a band that moved slowly up all the while is named beside the focus', () => {
  const { phase } = held('0+@4 5d@15 -7+@24 -11l@34 -10l@41 1f@50 -1l@57 0f@63 -9+@72 -2f@83 -3l@89 -4+@95 -3+@104 -12+@116 -10+@126 -11+@135');
  expect(phase).toMatchObject({ name: 'checking', rival: 'drifting' });
});

test('a focus knocked at one moment is asked about alone', () => {
  const { phase } = held('0d@4 11d@13 -9+@25 -14d@36 -11f@43 -4l@51 -5+@57 -10d@68 -9f@74 -10d@80');
  expect(phase).toMatchObject({ name: 'checking' });
  expect(phase).not.toHaveProperty('rival');
});

test('repeated, the question names both again', () => {
  const state = held('0+@4 5d@15 -7+@24 -11l@34 -10l@41 1f@50 -1l@57 0f@63 -9+@72 -2f@83 -3l@89 -4+@95 -3+@104 -12+@116 -10+@126 -11+@135');
  expect(currentPrompt(state, moment(0))).toMatchObject({ say: 'check focus', rival: 'drifting' });
});
