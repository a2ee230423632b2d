// A work: something a person does at the panel, again and again until the power goes.
import type { Random } from '../../../src/practice/random.ts';
import type { Seat } from '../../e2e/seat.ts';
import type { Course } from './fuse.ts';
import type { Kept } from './kept.ts';
import type { Fact, Ledger } from './ledger.ts';
import type { Place } from './place.ts';

export interface Life {
  readonly random: Random;
  readonly ledger: Ledger;
  /** A number that no other life has, for names that are told apart. */
  readonly number: number;
  /** Everything, as it lay there when this life began. */
  readonly before: Kept;
  /** Next comes a press after which something is kept. */
  pressed(): void;
  /** The panel has just shown that it took this. */
  acknowledged(fact: Fact): void;
}

export interface Work extends Course {
  readonly name: string;
  /** The profile it is done in: works of one desk go on where another was cut off. */
  readonly desk: 'logbook' | 'older store';
  /** The panel at the side, and not in a tab. */
  readonly docked?: boolean;
  /** What is put in its place beside the panel before that opens: the opening itself is then the work, and the power may go in it. */
  readonly before?: (life: Life, beside: Pick<Seat, 'evaluate'>, place: Place) => Promise<void>;
  /** At a panel that has just been opened. */
  readonly go: (life: Life, seat: Seat) => Promise<void>;
}
