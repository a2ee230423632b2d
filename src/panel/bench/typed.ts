// What was typed and picked at the bench, and how its rig was set up. It outlives the screens, so that a look elsewhere
// loses nothing.
import { signal, type Signal } from '@preact/signals';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import type { KitTraits, Typed } from './untyped.ts';
import type { BenchSubject } from './subject.ts';

export interface FromKit {
  readonly typed: Partial<Typed>;
  readonly traits: Partial<KitTraits>;
}

/** How a rig was set up, and for what. */
export interface Noted {
  readonly subject: BenchSubject;
  readonly bench: BenchRecord;
}

interface BenchState {
  /** Whose rig stands there: what is typed of it counts for no other. */
  readonly rig?: BenchSubject;
  /** What the kit knows of body, lens and converter; what is typed and ticked goes before it. */
  readonly known?: FromKit;
  readonly typed: Partial<Typed>;
  readonly traits: Partial<KitTraits>;
  readonly noted: Noted | null;
}
export type BenchStore = Signal<BenchState>;

export const newBench = (): BenchStore => signal({ typed: {}, traits: {}, noted: null });

export function noteIn(bench: BenchStore, noted: Noted | null): void {
  bench.value = { ...bench.value, noted };
}
