// One measurement in one shape, whether a sweep found it or a hand wrote it: what history, memory, filters and tables
// read.
import type { Subject } from '../sweep/plan.ts';
import type { CarriedOutcome } from '../sweep/end/outcome.ts';
import { steps, type Moment, type Steps } from '../units.ts';
import type { HandRecord } from './byHand.ts';
import type { Conditions } from './conditions.ts';
import type { LogRecord } from './record.ts';

export interface Measured {
  readonly id: string;
  readonly at: Moment;
  readonly subject: Subject;
  readonly by: 'sweep' | HandRecord['source'];
  readonly practice: boolean;
  readonly found: 'band' | 'value' | 'carried over' | 'past the limit' | 'beyond the scale' | 'nothing';
  /** The value to enter, and the other middle where both are as good; null where the sweep could not name one that holds. */
  readonly chosen: Steps | null;
  readonly other: Steps | null;
  readonly low: Steps | null;
  readonly high: Steps | null;
  readonly centre: number | null;
  /** 95 % interval of the centre, and the belief that it lies within one step of `chosen`; sweeps only. */
  readonly interval: { readonly from: number; readonly to: number } | null;
  readonly within: number | null;
  /** Its centre was found off the scale, or no value of the scale holds. */
  readonly service: boolean;
  readonly holds: number | null;
  readonly seconds: number | null;
  readonly conditions: Conditions | null;
}

const UNKNOWN = {
  chosen: null,
  other: null,
  low: null,
  high: null,
  centre: null,
  interval: null,
  within: null,
  service: false,
} as const;

export function measuredInSweep({ id, finished, practice, subject, outcome, conditions }: LogRecord): Measured {
  const { holds, seconds } = outcome.tally;
  const about = {
    id,
    at: finished,
    subject,
    by: 'sweep',
    practice,
    holds,
    seconds,
    conditions: conditions ?? null,
  } as const;
  switch (outcome.found) {
    case 'band': {
      const { chosen, other, low, high, centre, interval, within } = outcome;
      return { ...about, found: 'band', chosen, other, low, high, centre, interval, within, service: false };
    }
    case 'carried over': {
      const { centre, interval, within, inside, service } = outcome;
      const chosen = inside ? outcome.chosen : null;
      return { ...about, found: outcome.found, chosen, other: null, ...endsAround(outcome), centre, interval, within, service };
    }
    case 'past the limit':
      return { ...about, ...UNKNOWN, found: outcome.found, interval: outcome.interval };
    case 'beyond the scale':
    case 'nothing':
      return { ...about, ...UNKNOWN, found: outcome.found };
  }
}

/** The visible end, and the one that mirrors it past the limit; none where the light never came on at critical focus. */
function endsAround({ visible, centre, side }: CarriedOutcome): Pick<Measured, 'low' | 'high'> {
  if (visible === null) return { low: null, high: null };
  const hidden = steps(2 * centre - visible);
  return side === 'high' ? { low: visible, high: hidden } : { low: hidden, high: visible };
}

export function measuredByHand({ id, at, subject, source, finding, conditions }: HandRecord): Measured {
  const about = { ...UNKNOWN, id, at, subject, by: source, practice: false, holds: null, seconds: null, conditions };
  const { known, chosen } = finding;
  if (known === 'value') return { ...about, found: known, chosen };
  const { low, high } = finding;
  const centre = (low + high) / 2;
  const other = low + high - chosen;
  return {
    ...about,
    found: known,
    chosen,
    low,
    high,
    centre,
    other: Math.abs(centre - chosen) < 1 && other !== chosen ? (other as Steps) : null,
  };
}

export const measuredIn = (record: LogRecord | HandRecord): Measured => ('journal' in record ? measuredInSweep(record) : measuredByHand(record));
