// Which corrections a bracket is shot at: five around the value to check, two shots each (common practice, no source), on the body's own scale.
import { nearestOn, valuesOf, type Scale } from '../../sweep/scale.ts';
import { steps, type Steps } from '../../units.ts';
import { bracketOrder } from '../bracket.ts';

const VALUES = 5;
const ROUNDS = 2;
/** A tenth of the usual scale: four steps of -20 to +20. */
const SHARE = 0.1;

/** In the order to shoot. They stay as far apart at the end of the scale: then they all lie to one side of the value. */
export function bracketPlan(scale: Scale, around: Steps): Steps[] {
  const places = (scale.max - scale.min) / scale.step;
  const apart = Math.max(1, Math.min(Math.round(SHARE * places), Math.floor(places / (VALUES - 1))));
  const count = Math.min(VALUES, places + 1);
  const reach = (apart * (count - 1)) / 2;
  const middle = (nearestOn(scale, around) - scale.min) / scale.step;
  const first = Math.max(0, Math.min(places - 2 * reach, Math.round(middle - reach)));
  const all = valuesOf(scale);
  return bracketOrder(
    Array.from({ length: count }, (_, index) => all[first + index * apart] ?? steps(scale.max)),
    ROUNDS,
  );
}
