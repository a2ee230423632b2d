// The next value to hold, and why. The order of thought: to begin with, where the centre most likely is (one look ahead
// would start far out, and needs more time in the end); then the value that was surprising; then the walk outwards where
// the person chose it; then whatever tells most; once the centre is sure, the marginal values of the ends.
import { likeliestIn, type Belief } from '../belief/belief.ts';
import type { Readiness } from '../end/care.ts';
import { surestValue } from '../end/confidence.ts';
import { wasSurprising, type Hold } from '../hold.ts';
import type { Seconds, Steps } from '../../units.ts';
import { worthOfHolds, type Candidate } from './lookAhead.ts';
import { cheapestOf, missingParts } from './marginal.ts';
import { outwardFrom } from './outward.ts';
import { reasonFor, type Reason } from './reason.ts';
import type { SearchState } from './searchState.ts';

export interface Suggestion {
  readonly value: Steps;
  readonly reason: Reason;
}

/** Rates every value of the scale for one more hold. */
type Rating = (belief: Belief, dialled: Steps, holdTime: Seconds) => Candidate[];

/** What showing one part of an end is worth beside the best look at the centre (found on simulated observers). */
const SHOWING_AN_END = 1.2;

/** The value to hold next. It always answers, also when the sweep may end. */
export function suggest(state: SearchState, rating: Rating = worthOfHolds): Suggestion {
  const { belief, holds, readiness, order, skipped } = state;
  if (holds.length === 0 && skipped.length === 0) return { value: surestValue(belief).value, reason: { because: 'start' } };
  const allowed = (value: Steps | null): value is Steps => value !== null && !skipped.includes(value);
  const doubted = surprisingValue(holds);
  if (allowed(doubted)) return { value: doubted, reason: { because: 'again', value: doubted } };
  const step = order === 'outward' ? outwardFrom(belief.model.scale, holds) : null;
  if (allowed(step)) return { value: step, reason: reasonFor(step, state) };
  const centreIsSure = readiness.ready || readiness.wanted === 'ends';
  const marginal = centreIsSure ? cheapestOf(state) : null;
  if (marginal) return { value: marginal.value, reason: { because: 'end', side: marginal.side, part: marginal.part } };
  // Where the centre is sure and yet nothing is believed to hold, only the likeliest value can tell whether anything does.
  const hoped = !readiness.ready && readiness.wanted === 'ends' && readiness.ends === null ? likeliestIn(belief).value : null;
  if (allowed(hoped)) return { value: hoped, reason: reasonFor(hoped, state) };
  const worthiest = mostWorth(state, rating);
  return { value: worthiest, reason: reasonFor(worthiest, state) };
}

function mostWorth(state: SearchState, rating: Rating): Steps {
  const { belief, dialled, holdTime, care, skipped } = state;
  const rated = rating(belief, dialled, holdTime);
  const open = rated.filter(({ value }) => !skipped.includes(value));
  const candidates = open.length > 0 ? open : rated;
  const best = Math.max(...candidates.map(({ worth }) => worth));
  const missing = care === 'quick' && !reachesLimit(state.readiness) ? [] : missingParts(state);
  const total = ({ value, worth }: Candidate): number => {
    const part = missing.find((missed) => missed.value === value);
    return worth + (part ? SHOWING_AN_END * Math.abs(best) * part.chance : 0);
  };
  return candidates.reduce((chosen, next) => (total(next) > total(chosen) ? next : chosen)).value;
}

/** A band that comes to a limit of the scale: its centre stays open, so even quick care ends by its visible end. */
function reachesLimit(readiness: Readiness): boolean {
  const ends = 'ends' in readiness ? readiness.ends : null;
  return ends !== null && [ends.low, ends.high].some((end) => end.known === 'past' || (end.known === 'open' && end.next === null));
}

/** The last hold's value, when its reading was hardly to be expected and it has been held only once. */
function surprisingValue(holds: readonly Hold[]): Steps | null {
  const last = holds.at(-1);
  if (!last || !wasSurprising(last)) return null;
  return holds.filter(({ value }) => value === last.value).length === 1 ? last.value : null;
}
