// What a practice camera really was: its true band and how close the sweep came; or, where something was made wrong with it,
// the fault, and no band that its light never showed.
import { cameraOf } from '../../practice/cameras.ts';
import { holeOf, knockOf } from '../../practice/oddCamera.ts';
import type { Oddity } from '../../sweep/oddity.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { inTenths } from '../words/figures.ts';
import { REVEALED_WORDS } from './words.ts';

/** Whole sentences, in their order; null for a real camera. */
export function revealedInWords({ practice, scale, arrows }: Plan, outcome: Outcome, troubles: readonly Trouble[] = []): readonly string[] | null {
  if (practice === null) return null;
  const camera = cameraOf(practice, scale, arrows);
  const { oddity } = practice;
  if (oddity !== undefined) {
    const named = troubles.some(({ trouble }) => trouble === TROUBLE_OF[oddity]);
    const fault = `${REVEALED_WORDS.wrong[oddity]} ${named ? REVEALED_WORDS.named : REVEALED_WORDS.unnamed}`;
    return [fault, ...bandOf(oddity, camera, practice.seed)];
  }
  return [held(camera), comparison(outcome, (camera.low + camera.high) / 2, scale.step)];
}

type Band = Parameters<typeof holeOf>[0];

const held = ({ low, high }: Band): string =>
  REVEALED_WORDS.holds({ low: inTenths(low), high: inTenths(high), centre: inTenths((low + high) / 2) });

/** Where its light held, if it did. */
function bandOf(oddity: Oddity, camera: Band, seed: number): readonly string[] {
  const low = inTenths(camera.low);
  const high = inTenths(camera.high);
  switch (oddity) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere':
      return [];
    case 'hole in the band': {
      const { from, to } = holeOf(camera);
      return [REVEALED_WORDS.gap({ low, high, from: inTenths(from), to: inTenths(to) })];
    }
    case 'arrows turn round':
      return [held(camera)];
    case 'focus moves': {
      const { by } = knockOf(seed);
      return [REVEALED_WORDS.moved({ low, high, thenLow: inTenths(camera.low + by), thenHigh: inTenths(camera.high + by) })];
    }
  }
}

function comparison(outcome: Outcome, centre: number, step: number): string {
  if (outcome.found === 'carried over') return REVEALED_WORDS.centreOff({ steps: stepsOff(outcome.centre - centre, step) });
  if (outcome.found !== 'band') return REVEALED_WORDS.notFound;
  return REVEALED_WORDS.off({ value: writeSteps(outcome.chosen), steps: stepsOff(outcome.chosen - centre, step) });
}

function stepsOff(corrections: number, step: number): string {
  const off = Math.abs(corrections) / step;
  return off < 1 ? REVEALED_WORDS.lessThanAStep : REVEALED_WORDS.steps({ count: off.toFixed(1) });
}

const TROUBLE_OF: Record<Oddity, Trouble['trouble']> = {
  'flickers everywhere': 'flickers everywhere',
  'never lights': 'never lights',
  'lights everywhere': 'lights everywhere',
  'hole in the band': 'hole in the band',
  'arrows turn round': 'arrows contradict the lights',
  'focus moves': 'focus moved',
};
