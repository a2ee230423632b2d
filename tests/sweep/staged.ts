// Leads a sweep into each phase of the loop by real events, for tests that begin there.
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import type { Opened, SweepEvent } from '../../src/sweep/event.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import type { Plan, Subject } from '../../src/sweep/plan.ts';
import type { Phase, SweepState } from '../../src/sweep/state.ts';
import { transition } from '../../src/sweep/transition.ts';
import type { Verdict } from '../../src/sweep/verdict.ts';
import { millimetres, moment, steps, type Moment } from '../../src/units.ts';

const START = moment(1_000_000);
export const later = (seconds: number): Moment => moment(START + seconds * 1000);

export const SUBJECT: Subject = {
  situation: 's1',
  body: 'Velde M1',
  lens: 'Orrin 85 f/1.8',
  focalLength: millimetres(85),
  distance: millimetres(4250),
};

const PLAN: Plan = {
  subject: SUBJECT,
  // Short, so that many sweeps can be opened in little time.
  scale: { min: steps(-8), max: steps(8), step: 1 },
  arrows: 'right-is-up',
  manner: USUAL_MANNER,
  memory: NO_MEMORY,
  start: steps(0),
  practice: null,
};

/** The band held from +5 up to the limit. */
const TRANSFER: Plan['transfer'] = {
  of: 'sweep-0',
  side: 'high',
  visible: steps(5),
  holds: [4, 5, 8].map((value) => ({ value: steps(value), verdict: { light: value < 5 ? 'late' : 'steady', arrows: 'none' } })),
};

export const opened = (plan: Partial<Plan> = {}): Opened => ({
  did: 'opened',
  at: START,
  id: 'sweep-1',
  plan: { ...PLAN, ...plan },
});

const dialling = (plan: Partial<Plan> = {}): SweepState => openSweep(opened(plan)).state;

export const after = (state: SweepState, ...events: readonly SweepEvent[]): SweepState =>
  events.reduce((before, event) => transition(before, event).state, state);

const known = new Map<string, SweepState>();

/** A state in the phase, with a hold that began at `later(10)` where the phase has one. */
export function inPhase(name: Phase['name'], plan: Partial<Plan> = {}): SweepState {
  const key = JSON.stringify([name, plan]);
  const state = known.get(key) ?? leadTo(name, plan);
  known.set(key, state);
  return state;
}

function leadTo(name: Phase['name'], plan: Partial<Plan>): SweepState {
  const first = dialling(plan);
  switch (name) {
    case 'dialling':
      return first;
    case 'holding':
      return begin(first, 10);
    case 'judging':
      return after(begin(first, 10), { did: 'ran', at: later(15) });
    case 'paused':
      return after(first, { did: 'paused', at: later(10), by: 'key' });
    case 'finished':
      return after(first, { did: 'finished', at: later(10), by: 'key' });
    case 'offered':
      return heldUntil(first, 'offered', () => [1, 4]);
    case 'turning':
      return dialling({ ...plan, transfer: TRANSFER });
    case 'checking':
      // The focus moves after a few holds.
      return heldUntil(first, 'checking', (hold) => (hold < 5 ? [3, 6] : [-6, -3]));
  }
}

export const begin = (state: SweepState, second: number): SweepState => after(state, { did: 'began', at: later(second), value: nextOf(state), by: 'key' });

/** Judges the value under suggestion, over and over, until the phase is reached. */
function heldUntil(state: SweepState, name: Phase['name'], bandAt: (hold: number) => readonly [number, number]): SweepState {
  for (let hold = 0; hold < 40 && state.phase.name !== name; hold++) {
    const at = 10 + hold * 10;
    const verdict = seen(nextOf(state), bandAt(hold));
    const ran = verdict.light === 'steady' ? [{ did: 'ran', at: later(at + 5) } as const] : [];
    state = after(begin(state, at), ...ran, { did: 'judged', at: later(at + 6), verdict, by: 'key', heard: null });
  }
  if (state.phase.name !== name) throw new Error(`never reached ${name}`);
  return state;
}

/** What a body whose right arrow means "go up" shows at this value. */
function seen(value: number, [low, high]: readonly [number, number]): Verdict {
  const outside = Math.max(low - value, value - high);
  if (outside <= 0) return { light: 'steady', arrows: 'balanced' };
  return { light: outside <= 1 ? 'late' : outside <= 6 ? 'flicker' : 'dark', arrows: value < low ? 'right' : 'left' };
}

const nextOf = ({ phase }: SweepState) => ('next' in phase ? phase.next.value : steps(0));
