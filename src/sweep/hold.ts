// One finished hold: the value, what was seen, how it counts, and how expected that was.
import type { Moment, Steps } from '../units.ts';
import type { By } from './event.ts';
import type { Reading, Verdict } from './verdict.ts';

export interface Hold {
  readonly value: Steps;
  readonly verdict: Verdict;
  readonly reading: Reading;
  readonly began: Moment;
  readonly ended: Moment;
  readonly by: By;
  /** The words as they were heard, when the verdict came by voice. */
  readonly heard: string | null;
  /** The chance the belief gave to this reading beforehand. */
  readonly predictive: number;
}

/** A reading this unlikely is called surprising, and its value is held again. */
const SURPRISING = 0.02;

export const wasSurprising = (hold: Hold): boolean => hold.predictive < SURPRISING;
