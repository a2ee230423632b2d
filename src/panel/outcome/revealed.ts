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
  const { low, high } = cameraOf(practice, scale, arrows);
  const centre = (low + high) / 2;
  const truth = `This practice camera holds from ${inTenths(low)} to ${inTenths(high)}; its true centre is ${inTenths(centre)}.`;
  if (outcome.found === 'carried over') return { truth, comparison: `The centre found is off by ${stepsOff(outcome.centre - centre, scale.step)}.` };
  if (outcome.found !== 'band') return { truth, comparison: 'The sweep did not find it.' };
  return { truth, comparison: `${writeSteps(outcome.chosen)} is off by ${stepsOff(outcome.chosen - centre, scale.step)}.` };
}

function stepsOff(corrections: number, step: number): string {
  const off = Math.abs(corrections) / step;
  return off < 1 ? 'less than one step' : `${off.toFixed(1)} steps`;
}
