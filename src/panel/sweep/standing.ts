// How far the sweep has come, in two short lines: what is believed of the centre, and how many holds it will be. Where a trouble
// is shown nothing is said of the centre; where the finish is offered the face says how sure it is.
import { readiness } from '../../sweep/end/care.ts';
import { heldValues } from '../../sweep/end/ends.ts';
import { surestValue } from '../../sweep/end/confidence.ts';
import { findingOf } from '../../sweep/finding.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import { holdsToCome } from '../../sweep/end/remaining.ts';
import type { SweepState } from '../../sweep/state.ts';
import { standing } from '../../sweep/toEnter.ts';
import type { SweepWords } from '../../words/sweepWords.ts';

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

type Say = SweepWords['standing'];

export function sweepStandingOf({ belief, holds, plan, troubles, offered, checking }: Known, say: Say): SweepStanding {
  const made = holds.length;
  const count = say.holds(made);
  if (offered) return { centre: centreFound(findingOf(offered, troubles), say), wanted: count };
  if (standing(troubles).length > 0 || checking) return { centre: null, wanted: count };
  const enough = readiness(belief, heldValues(holds), plan.manner.care);
  const near = nearestKnown(belief);
  const told = near ? say.near(near.value, near.within) : say.anywhere;
  const centre = troubles.length > 0 ? null : told;
  if (enough.ready) return { centre, wanted: count };
  // That the centre is unknown says that it is wanted.
  const wanted = near === null && centre !== null && enough.wanted === 'centre' ? null : enough.wanted;
  return { centre, wanted: say.toCome(made, made + holdsToCome(belief, enough, plan.manner.care), wanted) };
}

function nearestKnown(belief: SweepState['belief']): ReturnType<typeof surestValue> | null {
  const surest = surestValue(belief);
  return surest.within < WORTH_NAMING ? null : surest;
}

function centreFound(finding: ReturnType<typeof findingOf>, say: Say): string | null {
  return finding.is === 'sure' ? say.centre(finding.outcome.centre) : null;
}
