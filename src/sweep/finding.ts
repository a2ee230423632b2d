// What a sweep may claim of itself, offered or finished: one union, from which face, lines, prompts and the result all draw, so
// that no two of them can say different things. Where a trouble stands nothing is certain, whatever the belief says.
import type { Steps } from '../units.ts';
import { standing, toEnter } from './toEnter.ts';
import type { Trouble } from './trouble/trouble.ts';
import type { BandOutcome, CarriedOutcome, Outcome } from './end/found.ts';

type BoundedOutcome = Extract<Outcome, { found: 'past the limit' | 'beyond the scale' }> | CarriedOutcome;

export type Finding =
  /** A value to enter, and how surely the centre lies within one step of it. */
  | { readonly is: 'sure'; readonly outcome: BandOutcome | CarriedOutcome; readonly enter: Steps }
  /** Something is wrong beside the correction: `trouble` is the likeliest, `others` may be wrong as well. */
  | { readonly is: 'doubtful'; readonly trouble: Trouble; readonly others: readonly Trouble[]; readonly outcome: Outcome }
  /** The scale does not reach the centre; `enter`: the value nearest to it, where the light still holds there. */
  | { readonly is: 'bounded'; readonly outcome: BoundedOutcome; readonly enter: Steps | null }
  | { readonly is: 'nothing' };

export function findingOf(outcome: Outcome, troubles: readonly Trouble[]): Finding {
  const [trouble, ...others] = standing(troubles);
  if (trouble) return { is: 'doubtful', trouble, others, outcome };
  switch (outcome.found) {
    case 'band':
      return { is: 'sure', outcome, enter: outcome.chosen };
    case 'carried over':
      if (!outcome.service) return { is: 'sure', outcome, enter: outcome.chosen };
      return { is: 'bounded', outcome, enter: toEnter(outcome, troubles) };
    case 'past the limit':
    case 'beyond the scale':
      return { is: 'bounded', outcome, enter: null };
    case 'nothing':
      return { is: 'nothing' };
  }
}
