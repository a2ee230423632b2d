// What the holds of one series say about the band: a posterior over every band that could be true, moved by one
// reading at a time, and the plain questions the rest of the sweep asks of it.
import type { Scale } from '../scale.ts';
import type { Reading } from '../verdict.ts';
import type { Steps } from '../../units.ts';
import { bandModel, USUAL_LAPSE, USUAL_REACH, type BandModel } from './bandModel.ts';
import { momentsOf, standIn, type Experiment, type Posterior as Grid } from './grid.ts';
import { observeLights, picked, reshared, startLights, unbound, type Bond, type BandPosterior } from './lights.ts';
import { IN, outcomesOf } from './observation.ts';
import { lampShares, priorWeights } from './prior.ts';
import type { Memory } from '../memory.ts';

/** Bands with their chances: enough to ask where the centre lies. */
export interface Bands {
  readonly model: BandModel;
  readonly posterior: Grid;
}

export interface Belief extends Bands {
  /** What was believed before the first hold of the series. */
  readonly opening: BandPosterior;
  readonly posterior: BandPosterior;
  /** What an earlier series of a width transfer left of the light; null in any other sweep. */
  readonly bond: Bond | null;
  /** Where the ends of the band were when this lens was last swept; null where nobody knows. */
  readonly remembered: NonNullable<Memory['ends']> | null;
}

/** Bands less likely than this are dropped; all of them together would not move a probability by a tenth of a per cent. */
const FLOOR = 1e-8;

const knownModels = new Map<string, BandModel>();

/** The bands of a scale, laid out once: every sweep and every series on it shares them. */
export function modelOf(scale: Scale, arrows: boolean, lapse = USUAL_LAPSE, reach = USUAL_REACH): BandModel {
  const key = `${scale.min} ${scale.max} ${scale.step} ${arrows} ${lapse} ${reach}`;
  const model = knownModels.get(key) ?? bandModel(scale, arrows, lapse, reach);
  knownModels.set(key, model);
  return model;
}

/** The belief before the first hold; `lapse` is the person's own share of spoilt holds, where they train and use it. */
export function openBelief(scale: Scale, arrows: boolean, memory: Memory, lapse?: number): Belief {
  const model = modelOf(scale, arrows, lapse);
  return { ...beliefFrom(model, priorWeights(model, memory), lampShares(model, memory)), remembered: memory.ends ?? null };
}

/** The belief that gives every band of the model this weight. */
export function beliefFrom(model: BandModel, weights: Float64Array, lamps = model.lampShares, bond: Bond | null = null): Belief {
  const opening = startLights(model, weights, lamps, bond !== null);
  return { model, opening, posterior: opening, bond, remembered: null };
}

/** The belief after one more reading, had the band lain `shift` steps further up then; `predictive` is the chance the old belief gave to it. */
export function weigh(belief: Belief, value: Steps, reading: Reading, shift = 0): { belief: Belief; predictive: number } {
  const { model, bond } = belief;
  const told = { stimulus: stimulusOf(model, value) - shift, seen: outcomesOf(reading, model.arrows) };
  const { posterior, predictive } = observeLights(model, belief.posterior, bond, told, FLOOR);
  return { belief: { ...belief, posterior }, predictive };
}

/**
 * The same belief, had no light been likelier than another before the first hold: what is stated must also be true of the
 * rarer lights, while the search goes by the usual ones.
 */
export function modest(belief: Belief): Belief {
  const { model, opening, posterior, bond } = belief;
  if (bond) return belief;
  const edges = model.evenEdges.map((even, kind) => even / opening.edges[kind]!);
  const lamp = model.evenLamps.map((even, kind) => even / opening.lamp[kind]!);
  return { ...belief, posterior: reshared(model, posterior, edges, lamp) };
}

/** Where a value stands in the list of values. */
export const stimulusOf = (model: BandModel, value: Steps): number => (value - model.scale.min) / model.scale.step;

/** Two accounts of one band as one, `share` of it the second. */
export function mixed({ model, posterior: one }: Bands, other: Grid, share: number): Bands {
  const which = Int32Array.from([...one.which, ...other.which]);
  const mass = Float64Array.from([...one.mass.map((chance) => (1 - share) * chance), ...other.mass.map((chance) => share * chance)]);
  return { model, posterior: { which, mass } };
}

/** At most so many bands that stand for all of them, with what is known of their light. */
export function fewOf({ model, posterior, bond }: Belief, count: number): BandPosterior {
  if (posterior.which.length <= count) return unbound(model, posterior, bond);
  const { places, mass } = standIn(posterior.mass, count);
  return unbound(model, { ...picked(model, posterior, places), mass }, bond);
}

/** What the engine of the look-ahead works with: these bands as its hypotheses, each with its light averaged over. */
export function expected(model: BandModel, few: BandPosterior): [Experiment, Grid] {
  const predict = model.predicting(few);
  const experiment = {
    hypotheses: few.which.length,
    stimuli: model.stimuli,
    outcomes: model.outcomes,
    likelihoods: (stimulus: number, _: Int32Array, into: Float64Array) => predict(stimulus, into),
  };
  return [experiment, { which: Int32Array.from(few.which.keys()), mass: few.mass }];
}

const knownChances = new WeakMap<BandPosterior, readonly number[]>();

/** P(in) of every value of the scale, lowest first; worked out once for each posterior. */
export function chancesOfIn(belief: Belief): readonly number[] {
  const known = knownChances.get(belief.posterior);
  if (known) return known;
  const chances = averageIn(belief);
  knownChances.set(belief.posterior, chances);
  return chances;
}

/** The value most likely to be in, and its chance; of equals the lowest. */
export function likeliestIn(belief: Belief): { readonly value: Steps; readonly chance: number } {
  return chancesOfIn(belief).reduce((best, chance, at) => (chance > best.chance ? { value: belief.model.values[at]!, chance } : best), {
    value: belief.model.scale.min,
    chance: -1,
  });
}

/** Bands enough for a chance of in: all of them once a few holds have thinned the belief out. */
const STAND_IN = 1500;

function averageIn(belief: Belief): number[] {
  const few = fewOf(belief, STAND_IN);
  const n = few.which.length;
  const rows = new Float64Array(belief.model.outcomes * n);
  const predict = belief.model.predicting(few);
  return belief.model.values.map((_, stimulus) => {
    predict(stimulus, rows);
    let sum = 0;
    for (let k = 0; k < n; k++) sum += few.mass[k]! * rows[IN * n + k]!;
    return sum;
  });
}

/** Mean and standard deviation of the centre, in corrections. */
export function centreOf(belief: Belief): { mean: number; sd: number } {
  const { mean, variance } = momentsOf(belief.posterior, belief.model.centre);
  return { mean, sd: Math.sqrt(variance) };
}

/** Probability of a statement about a hypothesis. */
export function chanceThat(belief: Belief, holds: (hypothesis: number) => boolean): number {
  let sum = 0;
  belief.posterior.which.forEach((hypothesis, k) => {
    if (holds(hypothesis)) sum += belief.posterior.mass[k]!;
  });
  return sum;
}

interface Level {
  readonly at: number;
  readonly chance: number;
}

/** The centre's probability on the grid of half-steps, lowest first: what the strip draws. */
export const centreProfile = (belief: Belief): Level[] => profileOf(belief, belief.model.centre);

/** The shortest run of the centre's profile between equal tails that holds `share` of it. */
export const centreInterval = (bands: Bands, share = 0.95) => intervalOf(bands, bands.model.centre, share);

/** The same of any quantity, given for every hypothesis. */
export function intervalOf(bands: Bands, quantity: Float64Array, share = 0.95): { from: number; to: number } {
  const profile = profileOf(bands, quantity);
  return { from: quantile(profile, (1 - share) / 2), to: quantile(profile, (1 + share) / 2) };
}

function profileOf({ posterior }: Bands, quantity: Float64Array): Level[] {
  const profile = new Map<number, number>();
  posterior.which.forEach((hypothesis, k) => {
    const at = quantity[hypothesis]!;
    profile.set(at, (profile.get(at) ?? 0) + posterior.mass[k]!);
  });
  return [...profile].map(([at, chance]) => ({ at, chance })).sort((p, q) => p.at - q.at);
}

function quantile(profile: readonly Level[], share: number): number {
  let below = 0;
  for (const { at, chance } of profile) {
    below += chance;
    if (below >= share) return at;
  }
  return profile.at(-1)?.at ?? Number.NaN;
}
