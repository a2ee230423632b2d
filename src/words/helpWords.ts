// The help: what is possible now, how a hold goes, what each light counts as, every word with its key, and what one switch can tell.
import type { Word } from '../sweep/inputs.ts';
import type { Phase } from '../sweep/state.ts';
import type { Gesture } from '../sweep/understood.ts';
import type { Light } from '../sweep/verdict.ts';

export interface HelpWords {
  readonly title: string;
  readonly about: string;
  readonly now: {
    readonly title: string;
    /** The ways to begin, where no sweep is under way. */
    readonly start: string;
    readonly practice: string;
    readonly bench: string;
    /** Where one is: here, or in another window. */
    readonly goOn: string;
    readonly watch: string;
  };
  readonly lights: {
    readonly title: string;
    readonly light: string;
    readonly counts: string;
    readonly is: Readonly<Record<Light, { readonly seen: string; readonly counts: string }>>;
    readonly note: string;
  };
  readonly spoken: {
    readonly title: string;
    readonly say: string;
    readonly means: string;
    readonly key: string;
    /** An example of setting a value. */
    readonly set: string;
    readonly meanings: Readonly<Record<Word, string>>;
    readonly together: string;
  };
  readonly presses: {
    readonly title: string;
    readonly about: string;
    readonly how: Readonly<Record<Gesture, string>>;
    readonly when: Readonly<Record<Phase['name'], string>>;
  };
  readonly before: { readonly title: string; readonly steps: readonly string[]; readonly manual: string };
}
