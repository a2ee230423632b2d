// What may be wrong beside the correction: its name, what was seen, what to check, and the figures behind it. Read with the
// session's desk, as the face of a sweep names a trouble.
import type { SweepsDiffer } from '../sweep/trouble/sweepsDiffer.ts';
import type { Trouble } from '../sweep/trouble/trouble.ts';

export type Named = Trouble | SweepsDiffer;

export interface TroubleWords {
  /** A focus that nobody has looked at yet is only asked about. */
  readonly name: (found: Named) => string;
  readonly seen: (found: Trouble) => string;
  /** Whole sentences, in small print. */
  readonly evidence: (found: Named) => string;
  /** The likeliest first. */
  readonly checks: Readonly<Record<Named['trouble'], readonly string[]>>;
  readonly toCheck: {
    readonly open: string;
    readonly title: string;
    readonly figures: string;
    readonly manual: string;
  };
}
