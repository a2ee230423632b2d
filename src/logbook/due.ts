// Why a situation deserves another sweep, each reason with its date and a plain sentence. The limits are common
// practice, no source; a person may set their own.
import { writeSteps } from '../sweep/scale.ts';
import { moment, type Moment } from '../units.ts';
import type { Temperature } from './conditions.ts';
import type { History } from './history.ts';
import type { KitNote } from './kitNote.ts';
import type { Measured } from './measured.ts';

export interface DueReason {
  readonly why: 'age' | 'firmware' | 'service' | 'temperature' | 're-check' | 'drift';
  /** Since when it has been due. */
  readonly since: Moment;
  readonly sentence: string;
}

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
  ];
  return reasons.filter((reason) => reason !== null).sort((a, b) => a.since - b.since);
}

function age(from: Moment, today: Today, { days }: Limits): DueReason | null {
  const since = moment(from + days * DAY);
  if (today.at < since) return null;
  const old = Math.floor((today.at - from) / DAY);
  const sentence = old < 60 ? `Last measured ${old} days ago.` : `Last measured ${Math.floor(old / 30.44)} months ago.`;
  return { why: 'age', since, sentence };
}

function noted({ at, what, note }: KitNote): DueReason {
  const happened = what === 'firmware' ? 'New firmware' : 'Serviced';
  const more = note === '' ? '' : `: ${note.replace(/\.$/, '')}`;
  return { why: what, since: at, sentence: `${happened} since it was measured${more}.` };
}

function temperature({ measured, entries }: History, today: Today, { degrees }: Limits): DueReason | null {
  const then = measured.at(-1)?.conditions?.temperature ?? entries.at(-1)?.conditions.temperature ?? null;
  if (then === null || today.temperature === null) return null;
  if (Math.abs(today.temperature - then) < degrees) return null;
  const written = (value: number) => `${String(Math.round(value)).replace('-', '\u2212')} °C`;
  return {
    why: 'temperature',
    since: today.at,
    sentence: `Measured at ${written(then)}, and it is ${written(today.temperature)} now.`,
  };
}

/** A sweep after the value was entered that does not have the value in its band. */
function failedRecheck({ measured, entries }: History): DueReason | null {
  const entry = entries.at(-1);
  const last = measured.at(-1);
  if (!entry || !last || last.at <= entry.at || last.by !== 'sweep' || holds(last, entry.value)) return null;
  return {
    why: 're-check',
    since: last.at,
    sentence: `The last re-check did not hold at ${writeSteps(entry.value)}, the value entered.`,
  };
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
  return { why: 'drift', since: last.at, sentence: `The last two measurements lie ${apart} steps apart.` };
}

const halfInterval = ({ interval }: Measured): number => (interval ? (interval.to - interval.from) / 2 : 0);
