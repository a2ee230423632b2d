// What the printed card of one body holds, for the bag: every lens with its values, when they were entered, and how
// sure they are. It prints what to dial in, so a value that is only measured says so.
import type { Body, Kit } from '../kit/kit.ts';
import type { Moment, Steps } from '../units.ts';
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

interface CardLens {
  /** With the converter, as the sweep had it. */
  readonly name: string;
  readonly serial: string | null;
  readonly lines: readonly CardLine[];
}

export interface Card {
  readonly body: string;
  readonly serial: string | null;
  readonly lenses: readonly CardLens[];
}

/**
 * The card of a body; lenses by name, each from short to long and from near to far. Nothing retired, nothing without
 * a value.
 */
export function cardOf(body: Body, kit: Kit, shelf: readonly Shelved[]): Card {
  const serials = new Map(kit.lenses.map(({ id, serial }) => [id, serial]));
  const lenses = new Map<string, { name: string; serial: string | null; lines: CardLine[] }>();
  for (const shelved of shelf) {
    const { situation, subject, retired } = shelved;
    const line = lineOf(shelved);
    if (!situation || situation.body !== body.id || retired || !line) continue;
    const key = `${situation.lens} ${situation.converter ?? ''}`;
    const lens = lenses.get(key) ?? { name: subject.lens, serial: serials.get(situation.lens) ?? null, lines: [] };
    lens.lines.push(line);
    lenses.set(key, lens);
  }
  for (const { lines } of lenses.values()) lines.sort((a, b) => a.focalLength - b.focalLength || a.distance - b.distance);
  const sorted = [...lenses.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return { body: body.name, serial: body.serial, lenses: sorted };
}

function lineOf({ subject, value, at, state, measured, history, due }: Shelved): CardLine | null {
  if (value === null || at === null || state === 'never measured') return null;
  const { focalLength, distance } = subject;
  const within = state === 'differ' ? null : (measured?.within ?? null);
  return { focalLength, distance, value, at, state, within, check: newestCheck(history.proofs, value), due: due.length > 0 };
}
