// The true band of a practice camera in words, and how close the sweep came.
import { cameraOf } from '../../practice/cameras.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { inTenths } from '../words/figures.ts';

export interface Revelation {
  readonly truth: string;
  readonly comparison: string;
}

export function revealedInWords({ practice, scale, arrows }: Plan, outcome: Outcome): Revelation | null {
  if (practice === null) return null;
  const { low, high } = cameraOf(practice.seed, scale, arrows);
  const centre = (low + high) / 2;
  const truth = `This practice camera holds from ${inTenths(low)} to ${inTenths(high)}; its true centre is ${inTenths(centre)}.`;
  if (outcome.found !== 'band') return { truth, comparison: 'The sweep did not find it.' };
  const off = Math.abs(outcome.chosen - centre) / scale.step;
  const by = off < 1 ? 'less than one step' : `${off.toFixed(1)} steps`;
  return { truth, comparison: `${writeSteps(outcome.chosen)} is off by ${by}.` };
}
