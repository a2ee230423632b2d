// Why a value is suggested, as data; the catalogue writes the sentences.
import type { Memory, RememberedCentre } from '../memory.ts';
import type { Hold } from '../hold.ts';
import type { Light } from '../verdict.ts';
import type { Steps } from '../../units.ts';
import type { SearchState } from './searchState.ts';

/** A value already held, and its light. */
export interface Landmark {
  readonly value: Steps;
  readonly light: Light;
  readonly counts: 'in' | 'out';
}

export type Reason =
  /** Where the centre most likely is before anything was held. */
  | { readonly because: 'start' }
  /** Where the logbook remembers it. */
  | { readonly because: 'remembered'; readonly from: NonNullable<RememberedCentre['from']> }
  /** Between the nearest held values on both sides. */
  | { readonly because: 'between'; readonly below: Landmark; readonly above: Landmark }
  /** Past everything held on that side. */
  | { readonly because: 'beyond'; readonly of: Landmark; readonly side: 'above' | 'below' }
  /** Held before; once more makes it surer. */
  | { readonly because: 'surer'; readonly of: Landmark }
  /** The last reading there was hardly to be expected. */
  | { readonly because: 'again'; readonly value: Steps }
  /** To show an end of the band: the last value that holds, or the next one out. */
  | { readonly because: 'end'; readonly side: 'low' | 'high'; readonly part: 'last' | 'next' }
  /** To see that the focus has not moved since the first holds. */
  | { readonly because: 'unmoved' }
  /** It is the value to enter, and was not held yet. */
  | { readonly because: 'proof' }
  /** Its verdict does not fit the others: eyes tire, and err in a row. */
  | { readonly because: 'doubted' }
  /** The person set it. */
  | { readonly because: 'yours' };

/** The reason for a value that the search chose. */
export function reasonFor(value: Steps, { holds }: Pick<SearchState, 'holds'>): Reason {
  if (holds.length === 0) return { because: 'start' };
  const same = holds.findLast((hold) => hold.value === value);
  if (same) return { because: 'surer', of: landmark(same) };
  const below = nearest(
    holds.filter((hold) => hold.value < value),
    (hold) => -hold.value,
  );
  const above = nearest(
    holds.filter((hold) => hold.value > value),
    (hold) => hold.value,
  );
  if (below && above) return { because: 'between', below: landmark(below), above: landmark(above) };
  if (below) return { because: 'beyond', of: landmark(below), side: 'above' };
  return above ? { because: 'beyond', of: landmark(above), side: 'below' } : { because: 'start' };
}

/** The reason for the very first value: what the logbook remembers of it, if that is where the value comes from. */
export function reasonToStart(value: Steps, step: number, { centres }: Memory): Reason {
  const near = centres.filter(({ centre }) => Math.abs(centre - value) <= step);
  const from = near.reduce<RememberedCentre | null>((best, next) => (best && best.weight >= next.weight ? best : next), null)?.from;
  return from ? { because: 'remembered', from } : { because: 'start' };
}

const landmark = ({ value, verdict, reading }: Hold): Landmark => ({ value, light: verdict.light, counts: reading.counts });

/** The latest hold of the value that comes first by `rank`. */
function nearest(holds: readonly Hold[], rank: (hold: Hold) => number): Hold | undefined {
  return holds.reduce<Hold | undefined>((best, hold) => (best && rank(best) < rank(hold) ? best : hold), undefined);
}
