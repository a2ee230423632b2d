// What photographs of one situation say of its value: the centre of the newest bracket, beside that of the band, and the newest check that
// could tell. Where both centres agree, they count together.
import { joinCentres } from '../../photographs/joinedCentre.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { nearestWithin, type Scale } from '../../sweep/scale.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { Moment, Steps } from '../../units.ts';
import type { Measured } from '../measured.ts';
import { newestCheck, type CheckFound } from '../newestCheck.ts';
import type { Shelved } from '../shelf.ts';

/** In steps. `band`: the centre that the light gave; `difference`: the bracket's less the band's. */
type BracketBeside =
  | { readonly is: 'agree'; readonly centre: WithInterval; readonly band: number; readonly difference: WithInterval; readonly joint: WithInterval }
  | { readonly is: 'differ'; readonly centre: WithInterval; readonly band: number; readonly difference: WithInterval }
  /** There is no centre with an interval to hold it against. `value`: the one nearest to it, null off the scale. */
  | { readonly is: 'alone'; readonly centre: WithInterval; readonly value: Steps | null };

export interface ShownThere {
  readonly subject: Subject;
  /** `at`: when the pictures were taken, or else kept. */
  readonly bracket: (BracketBeside & { readonly at: Moment }) | null;
  readonly check: CheckFound | null;
}

/** Null where photographs say nothing of its value. */
export function shownThere({ subject, measured, history }: Pick<Shelved, 'subject' | 'measured' | 'history'>, scale: Scale): ShownThere | null {
  const { proof, at } = history.proofs.findLast((record) => record.proof.is === 'bracket') ?? {};
  const bracket = proof?.is === 'bracket' && at !== undefined ? { ...beside(measured, proof.centre, scale), at: proof.taken ?? at } : null;
  const check = newestCheck(history.proofs, null);
  return bracket === null && check === null ? null : { subject, bracket, check };
}

function beside(measured: Measured | null, centre: WithInterval, scale: Scale): BracketBeside {
  if (measured === null || measured.centre === null || measured.interval === null) return { is: 'alone', centre, value: nearestWithin(scale, centre.value) };
  const { from, to } = measured.interval;
  return { centre, band: measured.centre, ...joinCentres({ value: measured.centre, low: from, high: to }, centre) };
}
