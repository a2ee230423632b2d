// What photographs of one situation say of its value: the centre of the newest bracket, beside that of the band, and the newest check that
// could tell. Where both centres agree, they count together.
import { joinCentres } from '../../photographs/joinedCentre.ts';
import type { Proof } from '../../photographs/proof.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { nearestWithin, type Scale } from '../../sweep/scale.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { Moment, Steps } from '../../units.ts';
import type { Measured } from '../measured.ts';
import type { ProofRecord } from '../proofRecord.ts';
import type { Shelved } from '../shelf.ts';

/** In steps. `band`: the centre that the light gave; `difference`: the bracket's less the band's. */
export type BracketBeside =
  | { readonly is: 'agree'; readonly centre: WithInterval; readonly band: number; readonly difference: WithInterval; readonly joint: WithInterval }
  | { readonly is: 'differ'; readonly centre: WithInterval; readonly band: number; readonly difference: WithInterval }
  /** There is no centre with an interval to hold it against. `value`: the one nearest to it, null off the scale. */
  | { readonly is: 'alone'; readonly centre: WithInterval; readonly value: Steps | null };

export interface CheckThere {
  readonly correction: Steps;
  /** Millimetres at the target, positive behind it. */
  readonly bias: WithInterval;
  readonly found: 'confirmed' | 'shifted';
}

/** `at`: when the pictures were taken, or else kept. */
export interface ShownThere {
  readonly subject: Subject;
  readonly bracket: (BracketBeside & { readonly at: Moment }) | null;
  readonly check: (CheckThere & { readonly at: Moment }) | null;
}

/** Null where photographs say nothing of its value. */
export function shownThere({ subject, measured, history }: Pick<Shelved, 'subject' | 'measured' | 'history'>, scale: Scale): ShownThere | null {
  const bracket = newest(history.proofs, (proof) => (proof.is === 'bracket' ? beside(measured, proof.centre, scale) : null));
  const check = newest(history.proofs, checkIn);
  return bracket === null && check === null ? null : { subject, bracket, check };
}

/** The last of them, oldest first, that says anything. */
function newest<Says extends object>(proofs: readonly ProofRecord[], saidBy: (proof: Proof) => Says | null): (Says & { readonly at: Moment }) | null {
  for (const { proof, at } of proofs.toReversed()) {
    const says = saidBy(proof);
    if (says) return { ...says, at: proof.taken ?? at };
  }
  return null;
}

function beside(measured: Measured | null, centre: WithInterval, scale: Scale): BracketBeside {
  if (measured === null || measured.centre === null || measured.interval === null) return { is: 'alone', centre, value: nearestWithin(scale, centre.value) };
  const { from, to } = measured.interval;
  return { centre, band: measured.centre, ...joinCentres({ value: measured.centre, low: from, high: to }, centre) };
}

function checkIn(proof: Proof): CheckThere | null {
  if (proof.is !== 'check' || proof.verdict.is === 'not enough') return null;
  return { correction: proof.correction, bias: proof.bias, found: proof.verdict.is };
}
