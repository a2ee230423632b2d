// The true band of a practice camera in words, and how close the sweep came.
import { cameraOf } from '../../practice/cameras.ts';
import type { Oddity } from '../../sweep/oddity.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { inTenths } from '../words/figures.ts';

export interface Revelation {
  /** What was wrong with it, and whether the sweep named it. */
  readonly wrong?: string;
  readonly truth: string;
  readonly comparison?: string;
}

export function revealedInWords({ practice, scale, arrows }: Plan, outcome: Outcome, troubles: readonly Trouble[] = []): Revelation | null {
  if (practice === null) return null;
  const { low, high } = cameraOf(practice, scale, arrows);
  const centre = (low + high) / 2;
  const truth = `This practice camera holds from ${inTenths(low)} to ${inTenths(high)}; its true centre is ${inTenths(centre)}.`;
  const { oddity } = practice;
  if (oddity !== undefined) {
    const named = troubles.some(({ trouble }) => trouble === TROUBLE_OF[oddity]);
    return { wrong: `${WRONG[oddity]} ${named ? 'The sweep named it.' : 'The sweep did not meet it often enough to name it.'}`, truth };
  }
  if (outcome.found === 'carried over') return { truth, comparison: `The centre found is off by ${stepsOff(outcome.centre - centre, scale.step)}.` };
  if (outcome.found !== 'band') return { truth, comparison: 'The sweep did not find it.' };
  return { truth, comparison: `${writeSteps(outcome.chosen)} is off by ${stepsOff(outcome.chosen - centre, scale.step)}.` };
}

function stepsOff(corrections: number, step: number): string {
  const off = Math.abs(corrections) / step;
  return off < 1 ? 'less than one step' : `${off.toFixed(1)} steps`;
}

const TROUBLE_OF: Record<Oddity, Trouble['trouble']> = {
  'flickers everywhere': 'flickers everywhere',
  'never lights': 'never lights',
  'lights everywhere': 'lights everywhere',
  'hole in the band': 'hole in the band',
  'arrows turn round': 'arrows contradict the lights',
  'focus moves': 'focus moved',
};

const WRONG: Record<Oddity, string> = {
  'flickers everywhere': 'It was made to flicker at every value.',
  'never lights': 'It was made to stay dark.',
  'lights everywhere': 'It was made to light at every value.',
  'hole in the band': 'It was made with a gap in the middle of its band.',
  'arrows turn round': 'Its arrows were made to turn round during the sweep.',
  'focus moves': 'Its focus was made to move during the sweep.',
};
