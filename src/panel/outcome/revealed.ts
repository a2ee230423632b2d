// What a practice camera really was: its true band and how close the sweep came; or, where something was made wrong with it,
// the fault, and no band that its light never showed.
import { cameraOf } from '../../practice/cameras.ts';
import { holeOf, knockOf } from '../../practice/oddCamera.ts';
import type { Oddity } from '../../sweep/oddity.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import type { RevealedFact } from '../../words/resultWords.ts';

/** In their order; null for a real camera. */
export function revealed({ practice, scale, arrows }: Plan, outcome: Outcome, troubles: readonly Trouble[] = []): readonly RevealedFact[] | null {
  if (practice === null) return null;
  const camera = cameraOf(practice, scale, arrows);
  const { oddity } = practice;
  if (oddity !== undefined) {
    const named = troubles.some(({ trouble }) => trouble === TROUBLE_OF[oddity]);
    return [{ is: 'made wrong', how: oddity, named }, ...bandOf(oddity, camera, practice.seed)];
  }
  return [held(camera), comparison(outcome, (camera.low + camera.high) / 2, scale.step)];
}

type Band = Parameters<typeof holeOf>[0];

const held = ({ low, high }: Band): RevealedFact => ({ is: 'held', low, high });

/** Where its light was steady, if it was. */
function bandOf(oddity: Oddity, camera: Band, seed: number): readonly RevealedFact[] {
  switch (oddity) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere':
      return [];
    case 'hole in the band':
      return [{ is: 'gap', low: camera.low, high: camera.high, ...holeOf(camera) }];
    case 'arrows turn round':
      return [held(camera)];
    case 'focus moves':
      return [{ is: 'moved', low: camera.low, high: camera.high, by: knockOf(seed).by }];
  }
}

function comparison(outcome: Outcome, centre: number, step: number): RevealedFact {
  if (outcome.found === 'carried over') return { is: 'centre off', off: Math.abs(outcome.centre - centre) / step };
  if (outcome.found !== 'band') return { is: 'not found' };
  return { is: 'value off', value: outcome.chosen, off: Math.abs(outcome.chosen - centre) / step };
}

const TROUBLE_OF: Record<Oddity, Trouble['trouble']> = {
  'flickers everywhere': 'flickers everywhere',
  'never lights': 'never lights',
  'lights everywhere': 'lights everywhere',
  'hole in the band': 'hole in the band',
  'arrows turn round': 'arrows contradict the lights',
  'focus moves': 'focus moved',
};
