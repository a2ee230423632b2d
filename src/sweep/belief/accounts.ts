// What a story of the sweep gives to its holds. Every story has one band and one light; they differ in where that band lay
// at each hold and in which holds count. So the chance of a run of holds under one story is put together from two halves:
// the holds up to a moment as they were, and those after it with the band moved.
import type { Hold } from '../hold.ts';
import type { Lights } from './bandModel.ts';
import { stimulusOf, type Belief } from './belief.ts';
import { picked, weightsOf, type BandPosterior } from './lights.ts';
import { outcomesOf } from './observation.ts';

/** What a story needs to know of a hold. */
export type Read = Pick<Hold, 'value' | 'reading'>;

/** Some of the bands as they were believed before the first hold. */
export function openingOf({ model, opening }: Belief, bands: Int32Array): BandPosterior {
  const at = new Map<number, number>();
  opening.which.forEach((band, k) => at.set(band, k));
  return picked(
    model,
    opening,
    bands.map((band) => at.get(band) ?? -1).filter((place) => place >= 0),
  );
}

/** What is known of the light of each band after the first k holds, for every k from none to all. */
export function upTo(belief: Belief, opening: BandPosterior, holds: readonly Read[]): Lights[] {
  let now: Lights = opening;
  return [opening, ...holds.map((hold) => (now = told(belief, now, hold, 0)))];
}

/** What the holds from the kth on say of the light, had every band lain `shift` steps further up, for every k from the first to none. */
export function from(belief: Belief, { which, edges, lamp }: BandPosterior, holds: readonly Read[], shift: number, first = 0): Lights[] {
  let now: Lights = { which, edges: new Float64Array(edges.length).fill(1), lamp: new Float64Array(lamp.length).fill(1) };
  const all = [now];
  for (let k = holds.length - 1; k >= first; k--) all.unshift((now = told(belief, now, holds[k]!, shift)));
  return [...Array.from({ length: first }, () => now), ...all];
}

/** The lights after one more hold. */
export function told({ model }: Belief, { which, edges, lamp }: Lights, { value, reading }: Read, shift: number): Lights {
  const after = { which, edges: edges.slice(), lamp: lamp.slice() };
  model.weigh(stimulusOf(model, value) - shift, outcomesOf(reading, model.arrows), after);
  return after;
}

/** The weight of each band where its light came to be this one. */
export const weighed = ({ model, bond }: Belief, { mass }: BandPosterior, lights: Lights): Float64Array =>
  weightsOf(model, lights, bond).map((weight, k) => weight * mass[k]!);

/** The weight of each band where these two halves make up the holds. */
export function joined(belief: Belief, bands: BandPosterior, before: Lights, after: Lights): Float64Array {
  const { model, bond } = belief;
  const { which, mass } = bands;
  if (bond) {
    const both = (one: Float64Array, other: Float64Array) => one.map((chance, at) => chance * other[at]!);
    return weighed(belief, bands, { which, edges: both(before.edges, after.edges), lamp: both(before.lamp, after.lamp) });
  }
  const weights = new Float64Array(which.length);
  for (let k = 0; k < which.length; k++) {
    weights[k] = mass[k]! * dot(before.edges, after.edges, k, model.edgeKinds) * dot(before.lamp, after.lamp, k, model.lampKinds);
  }
  return weights;
}

function dot(one: Float64Array, other: Float64Array, row: number, kinds: number): number {
  let sum = 0;
  for (let at = row * kinds; at < (row + 1) * kinds; at++) sum += one[at]! * other[at]!;
  return sum;
}
