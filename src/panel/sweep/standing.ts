// How far the sweep has come, in two short lines: what is believed of the centre, and what is still wanted.
import { readiness } from '../../sweep/end/care.ts';
import { heldValues } from '../../sweep/end/ends.ts';
import { surestValue } from '../../sweep/end/confidence.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { SweepState } from '../../sweep/state.ts';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { holdsCounted, inPercent } from '../words/quantities.ts';

export interface Standing {
  readonly centre: string;
  readonly wanted: string;
}

type Known = Pick<SweepState, 'belief' | 'holds' | 'plan' | 'troubles'>;

/** A centre less likely than this is not worth naming yet. */
const WORTH_NAMING = 0.3;

export function standingOf({ belief, holds, plan, troubles }: Known): Standing {
  const count = holdsCounted(holds.length);
  if (troubles.some(isHopeless)) return { centre: 'no centre can be told', wanted: `${count}, more would tell no more` };
  const { value, within } = surestValue(belief);
  const enough = readiness(belief, heldValues(holds), plan.manner.care);
  const wanted = `${count}, ${enough.ready ? 'enough is known' : WANTED[enough.wanted]}`;
  if (within < WORTH_NAMING) return { centre: 'the centre may still be anywhere', wanted };
  return { centre: `centre near ${writeSteps(value)}, ${inPercent(within)} sure within one step`, wanted };
}

const WANTED = { centre: 'a surer centre is wanted', ends: 'both ends are wanted' } as const;
