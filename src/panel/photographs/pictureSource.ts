// Which practice camera takes practice pictures, and what a sweep found of it.
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';

export interface PictureSource {
  readonly seed: number;
  readonly scale: Scale;
  /** The value to enter and the band's centre; null where none was measured. */
  readonly found: { readonly value: Steps; readonly band: WithInterval } | null;
}

/** After a sweep of the practice camera that found a band: the same camera. Null for a real one, and where something was made wrong with it. */
export function pictureSourceOf({ practice, scale }: Plan, outcome: Outcome): PictureSource | null {
  if (practice === null || practice.band !== undefined || practice.oddity !== undefined || outcome.found !== 'band') return null;
  const { chosen, centre, interval } = outcome;
  return { seed: practice.seed, scale, found: { value: chosen, band: { value: centre, low: interval.from, high: interval.to } } };
}
