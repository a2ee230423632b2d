// What the printed card of one body holds, for the bag: every lens with its values, when they were entered, and how
// sure they are. It prints what to dial in, so a value that is only measured says so.
import type { Body, Kit } from '../kit/kit.ts';
import type { Moment, Steps } from '../units.ts';
import { lensesOn, type LensOn } from './lensesOn.ts';
import { newestCheck, type CheckFound } from './newestCheck.ts';
import type { Shelved } from './shelf.ts';

export interface CardLine {
  readonly focalLength: number;
  readonly distance: number;
  readonly value: Steps;
  readonly at: Moment;
  readonly state: 'entered' | 'measured' | 'differ';
  /** Belief that the centre lies within one step of the value measured; null where nobody knows. */
  readonly within: number | null;
  /** What the newest check of this very value with photographs found; null where none could tell. */
  readonly check: CheckFound | null;
  readonly due: boolean;
}

export interface Card {
  readonly body: string;
  readonly serial: string | null;
  readonly lenses: readonly LensOn<CardLine>[];
}

/** The card of a body; nothing retired, nothing without a value. */
export const cardOf = (body: Body, kit: Kit, shelf: readonly Shelved[]): Card => ({
  body: body.name,
  serial: body.serial,
  lenses: lensesOn(body, kit, shelf, lineOf),
});

function lineOf({ subject, value, at, state, measured, history, due }: Shelved): CardLine | null {
  if (value === null || at === null || state === 'never measured') return null;
  const { focalLength, distance } = subject;
  const within = state === 'differ' ? null : (measured?.within ?? null);
  return { focalLength, distance, value, at, state, within, check: newestCheck(history.proofs, value), due: due.length > 0 };
}
