// What is known before the first hold. Widths follow a log-normal, centres a normal (common practice, no source);
// the logbook may sharpen both and tell how the body's light fails, but a fifth of the mass always stays on the plain prior so that a wrong memory
// can be overruled in a few holds.
import type { Memory } from '../memory.ts';
import { halfRange, type Scale } from '../scale.ts';
import type { BandModel } from './bandModel.ts';
import { afterSightings } from './lamp.ts';

const CENTRE_SD = 0.4;
const HALF_WIDTH_MEDIAN = 0.2;
const HALF_WIDTH_LOG_SD = 0.6;
const PLAIN_SHARE = 0.2;

/** Relative weight of every band before the first hold. */
export function priorWeights(model: BandModel, memory: Memory): Float64Array {
  const widths = widthWeights(model, memory);
  const plain = normalisedOver(model.centre, plainBell(model.scale));
  const trust = memory.centres.reduce((sum, { weight }) => sum + weight, 0);
  const weights = plain.map((p) => p * (trust > 0 ? PLAIN_SHARE : 1));
  for (const { centre, sd, weight } of memory.centres) {
    if (weight === 0) continue;
    const there = normalisedOver(model.centre, bell(centre, sd * model.scale.step));
    for (let h = 0; h < weights.length; h++) weights[h]! += (1 - PLAIN_SHARE) * (weight / trust) * there[h]!;
  }
  return weights.map((weight, h) => weight * widths[h]!);
}

/** What is expected of a band's width alone, wherever its centre lies. */
export function widthWeights(model: BandModel, { halfWidth }: Pick<Memory, 'halfWidth'>): Float64Array {
  const plain = normalisedOver(model.halfWidth, logBell(HALF_WIDTH_MEDIAN * halfRange(model.scale), HALF_WIDTH_LOG_SD));
  if (!halfWidth) return plain;
  const known = normalisedOver(model.halfWidth, logBell(halfWidth.median, halfWidth.logSd));
  return known.map((weight, h) => (1 - PLAIN_SHARE) * weight + PLAIN_SHARE * plain[h]!);
}

/** What is expected of the lamp of this body. */
export function lampShares(model: BandModel, { lamp }: Pick<Memory, 'lamp'>): Float64Array {
  if (!lamp || lamp.length === 0) return model.lampShares;
  const after = afterSightings(lamp);
  return model.lampShares.map((share, kind) => share * (PLAIN_SHARE + (1 - PLAIN_SHARE) * after[kind % after.length]!));
}

/** How likely a centre is where nothing is remembered, in any positive scale; `times` as spread out as usual. */
export const plainBell = (scale: Scale, times = 1) => bell((scale.min + scale.max) / 2, times * CENTRE_SD * halfRange(scale) * scale.step);

const logBell = (median: number, logSd: number) => (x: number) => Math.exp(-0.5 * (Math.log(x / median) / logSd) ** 2) / x;

const bell = (mean: number, sd: number) => (x: number) => Math.exp(-0.5 * ((x - mean) / sd) ** 2);

function normalisedOver(points: Float64Array, density: (x: number) => number): Float64Array {
  const weights = points.map(density);
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
