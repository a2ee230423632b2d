// The bands still alive after the holds so far, each with its chance and with what is known of its light. Where an earlier
// series of the same lens has tied the two parts of the light together (a width transfer), a bond says how.
import type { BandModel, Lights } from './bandModel.ts';

/** Chances of the bands, which sum to 1. Treat the arrays as read-only. */
export interface BandPosterior extends Lights {
  readonly mass: Float64Array;
}

/**
 * For each width in grid points: the joint weight of every pair of kinds, `edge * lampKinds + lamp`. Without a bond the
 * two parts are independent, and the tables hold their shares.
 */
export type Bond = ReadonlyMap<number, Float64Array>;

/** All bands with these weights (any positive scale), and the kinds as the model has them, or as a bond has. */
export function startLights(model: BandModel, weights: Float64Array, lampShares: Float64Array, bonded: boolean): BandPosterior {
  const which = Int32Array.from(weights.keys()).filter((h) => weights[h]! > 0);
  const mass = normalised(Float64Array.from(which, (h) => weights[h]!));
  const table = (shares: Float64Array): Float64Array => {
    const all = new Float64Array(which.length * shares.length).fill(1);
    if (!bonded) for (let at = 0; at < all.length; at++) all[at] = shares[at % shares.length]!;
    return all;
  };
  return { which, mass, edges: table(model.edgeShares), lamp: table(lampShares) };
}

/** Bayes' rule for "one of these outcomes was seen at this stimulus"; bands whose chance falls below `floor` are dropped. */
export function observeLights(
  model: BandModel,
  before: BandPosterior,
  bond: Bond | null,
  { stimulus, seen }: { readonly stimulus: number; readonly seen: readonly number[] },
  floor: number,
): { posterior: BandPosterior; predictive: number } {
  const after = { which: before.which, edges: before.edges.slice(), lamp: before.lamp.slice() };
  const whole = bond ? weightsOf(model, before, bond) : null;
  model.weigh(stimulus, seen, after);
  const mass = weightsOf(model, after, bond);
  let predictive = 0;
  for (let k = 0; k < mass.length; k++) predictive += mass[k] = before.mass[k]! * (mass[k]! / (whole ? whole[k]! : 1));
  const kept = Int32Array.from(mass.keys()).filter((k) => mass[k]! > floor * predictive);
  const posterior = picked(model, { ...after, mass }, kept);
  if (!bond) {
    scaled(posterior.edges, model.edgeKinds);
    scaled(posterior.lamp, model.lampKinds);
  }
  return { posterior: { ...posterior, mass: normalised(posterior.mass) }, predictive };
}

/** The weight that the kinds of each band add up to. */
export function weightsOf(model: BandModel, { which, edges, lamp }: Lights, bond: Bond | null): Float64Array {
  const { edgeKinds, lampKinds } = model;
  const weights = new Float64Array(which.length);
  for (let k = 0; k < which.length; k++) {
    if (!bond) {
      weights[k] = sumOf(edges, k * edgeKinds, edgeKinds) * sumOf(lamp, k * lampKinds, lampKinds);
      continue;
    }
    const tied = bond.get(model.width[which[k]!]!);
    if (!tied) continue;
    let sum = 0;
    for (let e = 0; e < edgeKinds; e++) {
      let row = 0;
      for (let l = 0; l < lampKinds; l++) row += tied[e * lampKinds + l]! * lamp[k * lampKinds + l]!;
      sum += edges[k * edgeKinds + e]! * row;
    }
    weights[k] = sum;
  }
  return weights;
}

/** The same bands with the bond taken into their tables, each part averaged over the other. */
export function unbound(model: BandModel, posterior: BandPosterior, bond: Bond | null): BandPosterior {
  if (!bond) return posterior;
  const { edgeKinds, lampKinds } = model;
  const { which, mass } = posterior;
  const edges = new Float64Array(which.length * edgeKinds);
  const lamp = new Float64Array(which.length * lampKinds);
  for (let k = 0; k < which.length; k++) {
    const tied = bond.get(model.width[which[k]!]!);
    if (!tied) continue;
    for (let e = 0; e < edgeKinds; e++) {
      for (let l = 0; l < lampKinds; l++) {
        const joint = posterior.edges[k * edgeKinds + e]! * tied[e * lampKinds + l]! * posterior.lamp[k * lampKinds + l]!;
        edges[k * edgeKinds + e]! += joint;
        lamp[k * lampKinds + l]! += joint;
      }
    }
  }
  scaled(edges, edgeKinds);
  scaled(lamp, lampKinds);
  return { which, mass, edges, lamp };
}

/** The same holds, had the kinds had other shares beforehand: each weight times the ratio of its shares. */
export function reshared(model: BandModel, posterior: BandPosterior, edges: Float64Array, lamp: Float64Array): BandPosterior {
  const after = { which: posterior.which, edges: posterior.edges.slice(), lamp: posterior.lamp.slice() };
  for (let at = 0; at < after.edges.length; at++) after.edges[at]! *= edges[at % edges.length]!;
  for (let at = 0; at < after.lamp.length; at++) after.lamp[at]! *= lamp[at % lamp.length]!;
  const told = weightsOf(model, after, null);
  scaled(after.edges, model.edgeKinds);
  scaled(after.lamp, model.lampKinds);
  return { ...after, mass: normalised(posterior.mass.map((chance, k) => chance * told[k]!)) };
}

/** Some of the bands, by their places, each with its table. */
export function picked(model: BandModel, { which, mass, edges, lamp }: BandPosterior, places: Int32Array): BandPosterior {
  const rows = (table: Float64Array, kinds: number): Float64Array => {
    const some = new Float64Array(places.length * kinds);
    places.forEach((place, k) => some.set(table.subarray(place * kinds, (place + 1) * kinds), k * kinds));
    return some;
  };
  return {
    which: Int32Array.from(places, (place) => which[place]!),
    mass: Float64Array.from(places, (place) => mass[place]!),
    edges: rows(edges, model.edgeKinds),
    lamp: rows(lamp, model.lampKinds),
  };
}

function sumOf(table: Float64Array, from: number, count: number): number {
  let sum = 0;
  for (let at = from; at < from + count; at++) sum += table[at]!;
  return sum;
}

/** Each row of so many kinds made to sum to 1. */
function scaled(table: Float64Array, kinds: number): void {
  for (let from = 0; from < table.length; from += kinds) {
    const sum = sumOf(table, from, kinds);
    if (sum > 0) for (let at = from; at < from + kinds; at++) table[at]! /= sum;
  }
}

function normalised(weights: Float64Array): Float64Array {
  const sum = sumOf(weights, 0, weights.length);
  return weights.map((weight) => weight / sum);
}
