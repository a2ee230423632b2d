// Putting a value in without a sweep: both ends of a band, or just the value the camera has now. A value in force is at
// once an entry, because it stands in the camera.
import { isOnScale, type Scale } from '../sweep/scale.ts';
import type { Subject } from '../sweep/plan.ts';
import { failed, got, type Result } from '../result.ts';
import { steps, type Moment } from '../units.ts';
import { middleOf, type HandFault, type HandRecord } from './byHand.ts';
import type { Conditions } from './conditions.ts';
import type { Entry } from './entry.ts';

export interface HandDraft {
  readonly subject: Subject;
  readonly scale: Scale;
  /** When it was measured or read off. */
  readonly at: Moment;
  readonly conditions: Conditions;
  readonly typed:
    { readonly known: 'band'; readonly one: number; readonly other: number; readonly chosen: number } | { readonly known: 'value'; readonly chosen: number };
}

export interface HandResult {
  readonly record: HandRecord;
  /** Set when the value is in force. */
  readonly entry: Entry | null;
}

/** Makes the record, and the entry of a value in force; `ids` are two new ones. */
export function recordByHand(draft: HandDraft, ids: { readonly record: string; readonly entry: string }): Result<HandResult, HandFault> {
  const { subject, scale, at, conditions, typed } = draft;
  if (!isOnScale(scale, typed.chosen)) return failed({ is: 'off the scale', scale });
  const chosen = typed.chosen;
  const about = { id: ids.record, at, subject, source: 'by hand', conditions } as const;
  if (typed.known === 'value') {
    const record = { ...about, finding: { known: 'value', chosen } } as const;
    return got({ record, entry: { id: ids.entry, at, subject, value: chosen, record: record.id, conditions } });
  }
  const middle = middleOf(scale, typed.one, typed.other);
  if (!middle.ok) return middle;
  const low = Math.min(typed.one, typed.other);
  const high = Math.max(typed.one, typed.other);
  if (chosen < low || chosen > high) return failed({ is: 'outside the ends' });
  return got({
    record: { ...about, finding: { known: 'band', low: steps(low), high: steps(high), chosen } },
    entry: null,
  });
}
