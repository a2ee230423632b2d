// How a sweep stands when its next value is chosen.
import type { Belief } from '../belief/belief.ts';
import type { Care } from '../care.ts';
import type { Readiness } from '../end/care.ts';
import type { Hold } from '../hold.ts';
import type { Order } from '../manner.ts';
import type { Seconds, Steps } from '../../units.ts';

/** Everything the choice rests on. */
export interface SearchState {
  readonly belief: Belief;
  readonly holds: readonly Hold[];
  readonly readiness: Readiness;
  readonly care: Care;
  readonly order: Order;
  readonly dialled: Steps;
  readonly holdTime: Seconds;
  readonly skipped: readonly Steps[];
}
