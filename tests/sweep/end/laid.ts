// Beliefs laid by hand, band by band, for tests of exact limits.
import { beliefFrom, modelOf, type Belief } from '../../../src/sweep/belief/belief.ts';
import type { BandModel } from '../../../src/sweep/belief/bandModel.ts';
import type { HeldValue } from '../../../src/sweep/end/ends.ts';
import { steps } from '../../../src/units.ts';

const SCALE = { min: steps(-8), max: steps(8), step: 1 };
const USUAL = modelOf(SCALE, false);

type Band = readonly [low: number, high: number, share: number];

/** Bands by their edges, each with its share. */
export const believing = (...bands: readonly Band[]): Belief => believingOn(USUAL, ...bands);

export function believingOn(model: BandModel, ...bands: readonly Band[]): Belief {
  const weights = new Float64Array(model.hypotheses);
  for (const [low, high, share] of bands) {
    const at = model.low.findIndex((edge, h) => edge === low && model.high[h] === high);
    if (at < 0) throw new Error(`no band from ${low} to ${high}`);
    weights[at] = share;
  }
  return beliefFrom(model, weights);
}

export const held = (...holds: readonly (readonly [number, 'in' | 'out'])[]): HeldValue[] => holds.map(([value, counts]) => ({ value: steps(value), counts }));
