// What was entered and picked at the bench, and how its rig was set up. It outlives the screens, so that a look elsewhere
// loses nothing.
import { signal, type Signal } from '@preact/signals';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import type { StepWorth } from '../../optics/stepWorth.ts';
import type { BenchEntries } from './entry.ts';
import type { BenchSubject } from './subject.ts';
import type { KitTraits, Picks } from './untyped.ts';
import type { BenchValues } from './values.ts';

export interface FromKit {
  readonly entries: Partial<BenchEntries>;
  /** Those that are written in the unit in use. */
  readonly values: Partial<BenchValues>;
  readonly picks: Partial<Picks>;
  readonly traits: Partial<KitTraits>;
  /** By the newest bracket of this pairing; null where there is none. */
  readonly worth: StepWorth | null;
}

/** How a rig was set up, and for what. */
export interface Noted {
  readonly subject: BenchSubject;
  readonly bench: BenchRecord;
}

interface BenchState {
  /** Whose rig stands there: what is entered for it counts for no other. */
  readonly rig?: BenchSubject;
  /** What the kit knows of body, lens and converter; what is entered and picked goes before it. */
  readonly known?: FromKit;
  readonly entries: Partial<BenchEntries>;
  readonly picks: Partial<Picks>;
  readonly traits: Partial<KitTraits>;
  readonly noted: Noted | null;
}
export type BenchStore = Signal<BenchState>;

export const newBench = (): BenchStore => signal({ entries: {}, picks: {}, traits: {}, noted: null });

export function noteIn(bench: BenchStore, noted: Noted | null): void {
  bench.value = { ...bench.value, noted };
}
