// How sure the sweep is of a value: the belief that the true centre lies within one step of it. This is the number
// the person is shown, so the bench holds it against what simulated observers really get. The grid stands for a
// continuum: a centre exactly one step away is half inside.
import { stimulusOf, type Bands, type Belief } from '../belief/belief.ts';
import type { Steps } from '../../units.ts';

/** P(|centre - value| <= one step). */
export const withinOneStep = (bands: Bands, value: Steps): number =>
  beliefAround(centresOf(bands), bands.posterior.mass, bands.model.values.length)[stimulusOf(bands.model, value)] ?? 0;

/** The value of the scale with the most belief within one step of it. */
export function surestValue(belief: Belief): { value: Steps; within: number } {
  const { values } = belief.model;
  const { index, within } = surestOf(centresOf(belief), belief.posterior.mass, values.length);
  return { value: values[index]!, within };
}

/**
 * The same for weighted centres given as places in the list of values: of equals, the lowest place. `within` has the
 * scale of the weights.
 */
export function surestOf(centres: Float64Array, weights: Float64Array, places: number): { index: number; within: number } {
  const around = beliefAround(centres, weights, places);
  let index = 0;
  for (let place = 1; place < places; place++) if (around[place]! > around[index]! + 1e-12) index = place;
  return { index, within: around[index]! };
}

function beliefAround(centres: Float64Array, weights: Float64Array, places: number): Float64Array {
  const sums = new Float64Array(places);
  for (let k = 0; k < centres.length; k++) {
    const at = centres[k]!;
    const from = Math.max(0, Math.ceil(at - 1));
    const to = Math.min(places - 1, Math.floor(at + 1));
    for (let place = from; place <= to; place++) {
      const edge = place - at === 1 || at - place === 1;
      sums[place]! += edge ? weights[k]! / 2 : weights[k]!;
    }
  }
  return sums;
}

const centresOf = ({ model, posterior }: Bands): Float64Array =>
  Float64Array.from(posterior.which, (h) => (model.centre[h]! - model.scale.min) / model.scale.step);
