// The value to enter in the camera, where a sweep found one and nothing is wrong beside the correction.
import type { Steps } from '../units.ts';
import type { Outcome } from './end/found.ts';
import type { Trouble } from './trouble/trouble.ts';

/** A focus that was seen to have moved is no doubt any more: the holds before it are put aside, and the series is a new one. */
export const standing = (troubles: readonly Trouble[]): readonly Trouble[] => troubles.filter((one) => one.trouble !== 'focus moved' || !one.seen);

/** Null where none is; after a width transfer the nearest value of the scale, where the light still holds there. */
export function toEnter(outcome: Outcome, troubles: readonly Trouble[]): Steps | null {
  const isFound = outcome.found === 'band' || (outcome.found === 'carried over' && outcome.inside);
  return isFound && standing(troubles).length === 0 ? outcome.chosen : null;
}
