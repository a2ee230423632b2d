// Which value tells most for the person's time: one step of look-ahead over every outcome of a hold. While the centre is
// wide open the fall of the log variance of the two ends counts; once it is nearly sure, what counts is being sure after the next hold.
// (Plain expected variance was tried on simulated observers: a twelfth more holds; the log variance of the centre alone: a fortieth more.)
import { expected, fewOf, type Belief } from '../belief/belief.ts';
import { logVariancesOf, lookAhead, type Score } from '../belief/criteria.ts';
import { IN } from '../belief/observation.ts';
import { SURE } from '../end/care.ts';
import { surestOf } from '../end/confidence.ts';
import type { Seconds, Steps } from '../../units.ts';
import { secondsOfHold } from './seconds.ts';

/** Bands the look-ahead works with: enough to rank the values, few enough to answer within a frame. */
const STAND_IN = 700;
/** Variance, in steps squared, below which an end is as good as known. */
const KNOWN = 0.1;
/** What the ends count beside their middle: more than all, since a hold that narrows an end also narrows the middle (found on simulated observers). */
const ENDS = 1.2;
/** Sureness from which the search closes in on the stop rule, and what crossing it is worth beside sureness itself. */
const NEARLY = 0.8;
const CROSSING = 0.5;

export interface Candidate {
  readonly value: Steps;
  /** What a hold there gains a second; the best value has the most. Comparable within one call only. */
  readonly worth: number;
  readonly chanceOfIn: number;
}

/** Every value of the scale with what a hold there gains. */
export function worthOfHolds(belief: Belief, dialled: Steps, holdTime: Seconds): Candidate[] {
  const { model } = belief;
  const few = fewOf(belief, STAND_IN);
  const at = Float64Array.from(few.which, (h) => (model.centre[h]! - model.scale.min) / model.scale.step);
  const inSteps = (edge: Float64Array): Float64Array => Float64Array.from(few.which, (h) => edge[h]! / model.scale.step);
  const sureness: Score = (joint) => surestOf(at, joint, model.values.length).within;
  const closing: Score = (joint, chance) => {
    const sure = sureness(joint, chance);
    return sure + (sure >= SURE * chance ? CROSSING * chance : 0);
  };
  const score: Score = sureness(few.mass, 1) >= NEARLY ? closing : negative(logVariancesOf(inSteps(model.low), inSteps(model.high), KNOWN, ENDS));
  const now = score(few.mass, 1);
  return lookAhead(...expected(model, few), score).map(({ stimulus, chances, expected }) => {
    const value = model.values[stimulus]!;
    const chanceOfIn = chances[IN]!;
    const cost = secondsOfHold(dialled, value, model.scale.step, chanceOfIn, holdTime);
    return { value, chanceOfIn, worth: (expected - now) / cost };
  });
}

const negative =
  (score: Score): Score =>
  (joint, chance) =>
    -score(joint, chance);
