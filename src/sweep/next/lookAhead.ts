// Which value tells most about the centre for the person's time: one step of look-ahead over every outcome of a hold.
import type { Belief } from '../belief/belief.ts';
import { expectedVariances, momentsOf, thinned, type Prospect } from '../belief/grid.ts';
import { IN } from '../belief/observation.ts';
import type { Seconds, Steps } from '../../units.ts';
import { secondsOfHold } from './seconds.ts';

/** Bands the look-ahead works with: enough to rank the values, few enough to answer within a frame. */
const STAND_IN = 2500;

export interface Candidate {
  readonly value: Steps;
  /** What a hold there gains a second; the best value has the most. */
  readonly worth: number;
  readonly chanceOfIn: number;
}

/** Every value of the scale with what a hold there gains: the fall of log variance of the centre per second. */
export function worthOfHolds(belief: Belief, current: Steps, holdTime: Seconds): Candidate[] {
  const { model } = belief;
  const few = thinned(belief.posterior, STAND_IN);
  const { variance } = momentsOf(few, model.centre);
  return expectedVariances(model, few, model.centre).map((prospect) => candidate(prospect, variance - prospect.expected));

  function candidate({ stimulus, chances }: Prospect, gain: number): Candidate {
    const value = model.values[stimulus]!;
    const chanceOfIn = chances[IN]!;
    return { value, chanceOfIn, worth: gain / secondsOfHold(current, value, model.scale.step, chanceOfIn, holdTime) };
  }
}
