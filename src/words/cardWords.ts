// The card of one body for the bag, on paper.
import type { CardLine } from '../logbook/card.ts';
import type { Moment } from '../units.ts';

export interface CardWords {
  readonly title: string;
  readonly gone: string;
  readonly empty: string;
  readonly about: (serial: string | null, printed: Moment) => readonly string[];
  readonly at: (line: CardLine) => string;
  readonly facts: (line: CardLine) => string;
}
