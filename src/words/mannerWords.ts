// How carefully a sweep is made and in which order: chosen on the start and in the settings.
import type { Care } from '../sweep/care.ts';
import type { Order } from '../sweep/manner.ts';

/** What can be chosen, and what it means. */
interface Choice {
  readonly label: string;
  readonly note: string;
}

export interface MannerWords {
  readonly care: string;
  readonly cares: Readonly<Record<Care, Choice>>;
  readonly order: string;
  readonly orders: Readonly<Record<Order, Choice>>;
}
