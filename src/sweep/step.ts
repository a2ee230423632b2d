// The shape of every move of the reducer, and the two ways it can go: the event is taken, or it is not.
import type { Alarm, Effect, NotNow, Prompt, Tone } from './effect.ts';
import type { SweepEvent } from './event.ts';
import type { SweepState } from './state.ts';
import { seconds, type Seconds } from '../units.ts';

export interface Move {
  readonly state: SweepState;
  readonly effects: readonly Effect[];
}

/** The event stands: it joins the journal, goes to disk first, and then the effects follow. */
export function taken(state: SweepState, event: SweepEvent, effects: readonly Effect[]): Move {
  return {
    state: { ...state, journal: [...state.journal, event] },
    effects: [{ do: 'keep', event }, { do: 'clear alarms' }, ...effects],
  };
}

/** The event makes no sense now: nothing changes, and the person is told why. */
export const refused = (state: SweepState, why: NotNow): Move => ({ state, effects: [sound('refused'), say({ say: 'not now', why })] });

/** Nothing to do and nothing to say: a clock that rang too late. */
export const ignored = (state: SweepState): Move => ({ state, effects: [] });

export const say = (prompt: Prompt): Effect => ({ do: 'say', prompt });
export const sound = (tone: Tone, after: Seconds = seconds(0)): Effect => ({ do: 'sound', tone, after });
export const wake = (alarm: Alarm, after: Seconds): Effect => ({ do: 'wake', alarm, after });
