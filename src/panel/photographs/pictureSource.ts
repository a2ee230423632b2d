// Which practice camera takes practice pictures, and what a sweep found of it.
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';

export interface PictureSource {
  readonly seed: number;
  readonly scale: Scale;
  /** The value to enter and the band's centre; null where none was measured. */
  readonly found: { readonly value: Steps; readonly band: WithInterval } | null;
}
