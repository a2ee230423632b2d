// The next value to hold, and why. The order of thought: first the value that was surprising, then whatever the chosen
// order of working asks for, and once the centre is sure the marginal values of the ends.
import type { Belief } from '../belief/belief.ts';
import type { Care, Readiness } from '../end/care.ts';
import type { Hold } from '../hold.ts';
import { wasSurprising } from '../hold.ts';
import type { Order } from '../plan.ts';
import type { Seconds, Steps } from '../../units.ts';
import { worthOfHolds } from './lookAhead.ts';
import { outwardFrom } from './outward.ts';
import { reasonFor, type Reason } from './reason.ts';
import { marginalValue } from './marginal.ts';

export interface Suggestion {
  readonly value: Steps;
  readonly reason: Reason;
}

/** Everything the choice rests on. */
export interface Standing {
  readonly belief: Belief;
  readonly holds: readonly Hold[];
  readonly readiness: Readiness;
  readonly care: Care;
  readonly order: Order;
  readonly dialled: Steps;
  readonly holdTime: Seconds;
  readonly skipped: readonly Steps[];
}

/** The value to hold next. It always answers, also when the sweep may end. */
export function suggest(standing: Standing): Suggestion {
  const allowed = (value: Steps | null): value is Steps => value !== null && !standing.skipped.includes(value);
  const doubted = surprisingValue(standing.holds);
  if (allowed(doubted)) return { value: doubted, reason: { because: 'again', value: doubted } };
  if (standing.order === 'outward') {
    const step = outwardFrom(standing.belief.model.scale, standing.holds);
    if (allowed(step)) return { value: step, reason: reasonFor(step, standing) };
  }
  const end = standing.readiness.ready || standing.readiness.wanted === 'ends' ? marginalValue(standing) : null;
  if (end && allowed(end.value)) return end;
  const worthiest = mostWorth(standing);
  return { value: worthiest, reason: reasonFor(worthiest, standing) };
}

function mostWorth({ belief, dialled, holdTime, skipped }: Standing): Steps {
  const candidates = worthOfHolds(belief, dialled, holdTime);
  const open = candidates.filter(({ value }) => !skipped.includes(value));
  return (open.length > 0 ? open : candidates).reduce((best, next) => (next.worth > best.worth ? next : best)).value;
}

/** The last hold's value, when its reading was hardly to be expected and it has been held only once. */
function surprisingValue(holds: readonly Hold[]): Steps | null {
  const last = holds.at(-1);
  if (!last || !wasSurprising(last)) return null;
  return holds.filter(({ value }) => value === last.value).length === 1 ? last.value : null;
}
