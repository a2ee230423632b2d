// How far the sweep has come, in two short lines: what is believed of the centre, and how many holds it will be. Where a trouble
// is shown nothing is said of the centre; where the finish is offered the face says how sure it is.
import { readiness } from '../../sweep/end/care.ts';
import { heldValues } from '../../sweep/end/ends.ts';
import { surestValue } from '../../sweep/end/confidence.ts';
import { findingOf } from '../../sweep/finding.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import { holdsToCome } from '../../sweep/end/remaining.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { SweepState } from '../../sweep/state.ts';
import { standing } from '../../sweep/toEnter.ts';
import { STANDING_WORDS } from '../outcome/words.ts';
import { inTenths } from '../words/figures.ts';
import { holdsCounted, inPercent } from '../words/quantities.ts';

export interface SweepStanding {
  /** Null where nothing can be said of it. */
  readonly centre: string | null;
  readonly wanted: string;
}

type Known = Pick<SweepState, 'belief' | 'holds' | 'plan' | 'troubles'> & {
  /** What the finish is offered with, or null; `checking`: the focus is asked about. */
  readonly offered: Outcome | null;
  readonly checking: boolean;
};

/** A centre less likely than this is not worth naming yet. */
const WORTH_NAMING = 0.3;

export function sweepStandingOf({ belief, holds, plan, troubles, offered, checking }: Known): SweepStanding {
  const made = holds.length;
  const count = holdsCounted(made);
  if (offered) return { centre: centreFound(findingOf(offered, troubles)), wanted: count };
  if (standing(troubles).length > 0 || checking) return { centre: null, wanted: count };
  const enough = readiness(belief, heldValues(holds), plan.manner.care);
  const centre = troubles.length > 0 ? null : centreNear(belief);
  if (enough.ready) return { centre, wanted: count };
  const about = STANDING_WORDS.about({ made, all: made + holdsToCome(belief, enough, plan.manner.care) });
  return { centre, wanted: `${about}, ${STANDING_WORDS.wanted[enough.wanted]}` };
}

function centreNear(belief: SweepState['belief']): string {
  const { value, within } = surestValue(belief);
  if (within < WORTH_NAMING) return STANDING_WORDS.anywhere;
  return STANDING_WORDS.near({ value: writeSteps(value), percent: inPercent(within) });
}

function centreFound(finding: ReturnType<typeof findingOf>): string | null {
  return finding.is === 'sure' ? STANDING_WORDS.centre({ centre: inTenths(finding.outcome.centre) }) : null;
}
