// An observer without noise: the values from `low` to `high` hold, one step outside the light is late, further out it
// flickers, and from six steps it stays dark. Sweeps that begin alike share the work.
import { openSweep } from '../../src/sweep/opening.ts';
import type { Outcome } from '../../src/sweep/end/outcome.ts';
import type { SweepEvent } from '../../src/sweep/event.ts';
import type { Scale } from '../../src/sweep/scale.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { transition } from '../../src/sweep/transition.ts';
import type { Verdict } from '../../src/sweep/verdict.ts';
import { moment } from '../../src/units.ts';
import { later, opened } from './staged.ts';

const PATIENCE = 40;

export function noiseFreeLight(low: number, high: number, value: number): Verdict {
  const outside = Math.max(low - value, value - high);
  if (outside <= 0) return { light: 'steady', arrows: 'none' };
  return { light: outside <= 1 ? 'late' : outside <= 5 ? 'flicker' : 'dark', arrows: 'none' };
}

/** A sweep machine for one scale: runs to both ends at standard care and gives the outcome, null when it never ends. */
export function noiseFreeSweeps(scale: Scale): (low: number, high: number) => Outcome | null {
  const known = new Map<string, SweepState>();
  const first = openSweep(opened({ scale, arrows: 'absent' })).state;
  return (low, high) => {
    let state = first;
    let key = '';
    while (state.phase.name === 'dialling' && state.holds.length < PATIENCE) {
      const { value } = state.phase.next;
      const verdict = noiseFreeLight(low, high, value);
      key += `${value}${verdict.light};`;
      const after: SweepState = known.get(key) ?? hold(state, verdict);
      known.set(key, after);
      state = after;
    }
    return state.phase.name === 'offered' ? state.phase.outcome : null;
  };
}

/** Holds on with a band that never wavers, until the panel no longer asks for a value. */
export function ranWith(start: SweepState, low: number, high: number): SweepState {
  let state = start;
  while (state.phase.name === 'dialling' && state.holds.length < PATIENCE) {
    state = hold(state, noiseFreeLight(low, high, state.phase.next.value));
  }
  return state;
}

function hold(state: SweepState, verdict: Verdict): SweepState {
  if (state.phase.name !== 'dialling') return state;
  const { value } = state.phase.next;
  const began = 10 * state.holds.length;
  const events: SweepEvent[] = [
    { did: 'began', at: later(began), value, by: 'key' },
    { did: 'ran', at: later(began + 5) },
    { did: 'judged', at: moment(later(began + 6)), verdict, by: 'key', heard: null },
  ];
  return events.reduce((before, event) => transition(before, event).state, state);
}
