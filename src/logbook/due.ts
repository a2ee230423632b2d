// Why a situation deserves another sweep, each reason with its date and what it rests on. The limits are common
// practice, no source; a person may set their own.
import type { WithInterval } from '../photographs/withInterval.ts';
import { moment, type Moment, type Steps } from '../units.ts';
import type { Temperature } from './conditions.ts';
import type { History } from './history.ts';
import type { KitNote } from './kitNote.ts';
import type { Measured } from './measured.ts';
import { newestCheck } from './newestCheck.ts';
import { standingOf } from './standing.ts';

/** `since`: since when it has been due. */
export type DueReason = { readonly since: Moment } & (
  | { readonly why: 'age'; readonly days: number }
  /** What the person noted of it; may be empty. */
  | { readonly why: 'firmware' | 'service'; readonly note: string }
  /** Degrees Celsius. */
  | { readonly why: 'temperature'; readonly before: number; readonly now: number }
  /** The value entered, at which the light was not steady. */
  | { readonly why: 're-check'; readonly value: Steps }
  /** Steps between the last two centres. */
  | { readonly why: 'drift'; readonly apart: number }
  /** The value to go by, and what the newest check of it found: millimetres at the target, positive behind it. */
  | { readonly why: 'photographs'; readonly value: Steps; readonly bias: WithInterval }
);

export interface Limits {
  /** Days after which a measurement is old. */
  readonly days: number;
  /** Degrees between then and now that are far. */
  readonly degrees: number;
  /** Steps between the last two centres that are a big drift. */
  readonly steps: number;
}
export const USUAL_LIMITS: Limits = { days: 365, degrees: 15, steps: 3 };

/** Now, and how warm it is where the camera will be used; null when nobody said. */
export interface Today {
  readonly at: Moment;
  readonly temperature: Temperature | null;
}

const DAY = 86_400_000;

/** The reasons to measure again, the longest due first. `notes`: of the situation's body, lens and converter. */
export function dueAgain(history: History, notes: readonly KitNote[], today: Today, limits: Limits): DueReason[] {
  const last = history.measured.at(-1) ?? null;
  const from = last?.at ?? history.entries.at(-1)?.at;
  if (from === undefined) return [];
  const reasons = [
    age(from, today, limits),
    ...notes.filter(({ at }) => at > from).map(noted),
    temperature(history, today, limits),
    failedRecheck(history),
    drift(history.measured, limits),
    photographs(history),
  ];
  return reasons.filter((reason) => reason !== null).sort((a, b) => a.since - b.since);
}

function age(from: Moment, today: Today, { days }: Limits): DueReason | null {
  const since = moment(from + days * DAY);
  if (today.at < since) return null;
  return { why: 'age', since, days: Math.floor((today.at - from) / DAY) };
}

const noted = ({ at, what, note }: KitNote): DueReason => ({ why: what, since: at, note });

function temperature({ measured, entries }: History, today: Today, { degrees }: Limits): DueReason | null {
  const then = measured.at(-1)?.conditions?.temperature ?? entries.at(-1)?.conditions.temperature ?? null;
  if (then === null || today.temperature === null) return null;
  if (Math.abs(today.temperature - then) < degrees) return null;
  return { why: 'temperature', since: today.at, before: then, now: today.temperature };
}

/** A sweep after the value was entered that does not have the value in its band. */
function failedRecheck({ measured, entries }: History): DueReason | null {
  const entry = entries.at(-1);
  const last = measured.at(-1);
  if (!entry || !last || last.at <= entry.at || last.by !== 'sweep' || holds(last, entry.value)) return null;
  return { why: 're-check', since: last.at, value: entry.value };
}

function holds({ found, low, high }: Measured, value: number): boolean {
  if (found === 'past the limit') return true;
  return low !== null && high !== null && value >= low && value <= high;
}

/** Further apart than the limit, and than both intervals together allow. */
function drift(measured: readonly Measured[], { steps }: Limits): DueReason | null {
  const [before, last] = measured.filter(({ centre }) => centre !== null).slice(-2);
  if (!before || !last || before.centre === null || last.centre === null) return null;
  const apart = Math.abs(last.centre - before.centre);
  if (apart < steps || apart <= halfInterval(before) + halfInterval(last)) return null;
  return { why: 'drift', since: last.at, apart };
}

const halfInterval = ({ interval }: Measured): number => (interval ? (interval.to - interval.from) / 2 : 0);

/** A check of the value to go by that found a shift, until another check confirms the value or a sweep is made after it. */
function photographs(history: History): DueReason | null {
  const { value } = standingOf(history);
  const check = value === null ? null : newestCheck(history.proofs, value);
  if (check?.found !== 'shifted' || check.at <= (history.measured.at(-1)?.at ?? -Infinity)) return null;
  return { why: 'photographs', since: check.at, value: check.correction, bias: check.bias };
}
