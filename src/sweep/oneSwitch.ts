// Tells the short, the double and the long press of one switch apart, from when it went down and came up. Only a press
// during a hold, when the finish is offered or at a result waits for a possible second one. A press in dialling is told at once, so
// that the hold begins at the down itself; should it turn out long, the long press is told as well and takes the hold back.
import type { Input } from './inputs.ts';
import type { Phase } from './state.ts';
import { between, moment, type Moment } from '../units.ts';

/** A second press later than this is another press; one held this long is a long press. Common practice, no source. */
const DOUBLE_WITHIN = 0.4;
const LONG_AFTER = 0.6;
/** Where two presses mean something. */
const WAITS: readonly Phase['name'][] = ['holding', 'offered', 'finished'];

export type Contact =
  | { readonly move: 'down'; readonly at: Moment; readonly during: Phase['name'] }
  | { readonly move: 'up'; readonly at: Moment }
  /** Nothing moved, but time has passed. */
  | { readonly move: 'none'; readonly at: Moment };

export type OneSwitch =
  | { readonly is: 'up' }
  | { readonly is: 'down'; readonly since: Moment; readonly during: Phase['name'] }
  /** Up again after a short press: a second one would make it double. */
  | { readonly is: 'between'; readonly since: Moment; readonly during: Phase['name'] }
  /** Down, and everything it could mean has been told. */
  | { readonly is: 'spent' };

type Press = Extract<Input, { told: 'press' }>;

export interface Switched {
  readonly state: OneSwitch;
  readonly presses: readonly Press[];
}

export const RELEASED: OneSwitch = { is: 'up' };

/** Moves the switch; every press is told exactly once, but a long one in dialling, which is told as short before. */
export function moveSwitch(state: OneSwitch, contact: Contact): Switched {
  switch (state.is) {
    case 'up':
    case 'spent':
      if (contact.move === 'down') return wentDown(contact);
      return { state: contact.move === 'up' ? RELEASED : state, presses: [] };
    case 'down':
      return whileDown(state, contact);
    case 'between':
      return inBetween(state, contact);
  }
}

/** When the switch must be looked at again although nothing moved, or null. */
export function lookAgainAt(state: OneSwitch): Moment | null {
  if (state.is === 'down') return moment(state.since + LONG_AFTER * 1000);
  return state.is === 'between' ? moment(state.since + DOUBLE_WITHIN * 1000) : null;
}

function wentDown({ at, during }: Extract<Contact, { move: 'down' }>): Switched {
  const state = { is: 'down', since: at, during } as const;
  return { state, presses: during === 'dialling' ? [told('short', state)] : [] };
}

function whileDown(state: Extract<OneSwitch, { is: 'down' }>, contact: Contact): Switched {
  const { since, during } = state;
  const length = between(since, contact.at);
  if (length >= LONG_AFTER) return { state: contact.move === 'up' ? RELEASED : { is: 'spent' }, presses: [told('long', state)] };
  if (contact.move !== 'up') return { state, presses: [] };
  if (during === 'dialling') return { state: RELEASED, presses: [] };
  if (WAITS.includes(during) && length < DOUBLE_WITHIN) return { state: { is: 'between', since, during }, presses: [] };
  return { state: RELEASED, presses: [told('short', state)] };
}

function inBetween(state: Extract<OneSwitch, { is: 'between' }>, contact: Contact): Switched {
  const over = between(state.since, contact.at) >= DOUBLE_WITHIN;
  if (contact.move === 'down' && !over) return { state: { is: 'spent' }, presses: [told('double', state)] };
  if (!over) return { state, presses: [] };
  const first = told('short', state);
  if (contact.move !== 'down') return { state: RELEASED, presses: [first] };
  const next = wentDown(contact);
  return { state: next.state, presses: [first, ...next.presses] };
}

const told = (press: Press['press'], { since, during }: { since: Moment; during: Phase['name'] }): Press => ({
  told: 'press',
  press,
  during,
  downAt: since,
});
