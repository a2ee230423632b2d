// What can be wrong beside the correction itself, each with the figures that tell it. A Bayes factor weighs the story of
// the trouble against the story that one healthy band made all the holds (Kass & Raftery 1995, J. Am. Stat. Assoc.
// 90:773). Like everything of a state it follows from the journal and is never stored.
import type { Steps } from '../../units.ts';
import type { Drift } from '../end/drift.ts';

/** The light does the same at every value: no value, or every value, seems right. */
export interface SameEverywhere {
  readonly trouble: 'flickers everywhere' | 'never lights' | 'lights everywhere';
  readonly bayesFactor: number;
  /** Values that looked so each time, out of all that were held. */
  readonly alike: number;
  readonly of: number;
}

/** Values inside the band fail, with values that hold on both sides. */
export interface Hole {
  readonly trouble: 'hole in the band';
  readonly bayesFactor: number;
  readonly from: Steps;
  readonly to: Steps;
}

/** The arrows send another way than the lights tell. */
export interface ArrowsContradict {
  readonly trouble: 'arrows contradict the lights';
  readonly bayesFactor: number;
  readonly how: 'turned round' | 'turned midway' | 'by chance';
}

/** The holds before and after some moment tell of two bands. `seen`: in live view the focus had moved. */
export interface FocusMoved extends Drift {
  readonly trouble: 'focus moved';
  readonly seen: boolean;
}

/** Another story of the holds than one band that stays; `values`: those whose verdicts do not fit, the rate in steps a minute, the play in steps. */
export type OtherStory =
  | { readonly trouble: 'verdicts misjudged'; readonly bayesFactor: number; readonly values: readonly Steps[] }
  | { readonly trouble: 'band drifts'; readonly bayesFactor: number; readonly rate: number }
  | { readonly trouble: 'play'; readonly bayesFactor: number; readonly size: number };

/** What one sweep can show. */
export type Trouble = SameEverywhere | Hole | ArrowsContradict | FocusMoved | OtherStory;
