// One light for the stories of a sweep: how softly it gives way as any band may, how it fails as this sweep has shown it.
// The softness is not taken from the sweep, since a story that explains the holds badly makes the ends look soft.
import type { AverageLight } from './bandModel.ts';
import { fewOf, type Belief } from './belief.ts';
import type { BandPosterior } from './lights.ts';

const known = new WeakMap<BandPosterior, AverageLight>();
/** Bands enough for an average. */
const STAND_IN = 300;

/** Worked out once for each posterior. */
export function averageLight(belief: Belief): AverageLight {
  const { model, posterior } = belief;
  const before = known.get(posterior);
  if (before) return before;
  const few = fewOf(belief, STAND_IN);
  const lamp = new Float64Array(model.lampKinds);
  for (let at = 0; at < few.lamp.length; at++) lamp[at % model.lampKinds]! += few.mass[Math.floor(at / model.lampKinds)]! * few.lamp[at]!;
  const light = model.averaged(model.edgeShares, lamp);
  known.set(posterior, light);
  return light;
}
