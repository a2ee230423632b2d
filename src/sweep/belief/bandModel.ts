// Every band that could be true of one situation, and what each would show: two edges on a half-step grid that
// reaches past both limits (so that a clipped band is a hypothesis and not an accident), the softness of the
// edges, how far out the light stays dark, and, on a body with arrows, whether they point as its setting says.
// Constants: common practice and simulation, no source.
import { halfRange, valuesOf, type Scale } from '../scale.ts';
import type { Steps } from '../../units.ts';
import type { Experiment } from './grid.ts';
import { ogive } from './normalOgive.ts';
import { GRADES, outcomeCount } from './observation.ts';

/** Edge softness in steps: the standard deviation of the light's wavering. */
const SOFTNESS = [0.3, 0.6, 1.1];
/** Steps outside the band from which the light stays dark. */
const DARK_FROM = [3, 6, 10];
/** Steps outside the band up to which it still comes on, late. */
const NEAR_UP_TO = 1;
/** How sharply one grade gives way to the next, in steps, plus a share of the boundary. */
const GRADE_BLUR = 0.5;
const GRADE_BLUR_SHARE = 0.1;
/** Share of failed holds whose grade tells nothing. */
const STRAY_GRADE = 0.1;
/** Share of holds that are spoilt (a blink, a nudge of the camera), and of those the share that still look in. */
export const USUAL_LAPSE = 0.02;
const LAPSE_IN = 0.1;
/** How often an arrow points to the side its sense says. */
const SIDE_RIGHT = 0.95;
/** The middle softness with the middle boundary, arrows as set: its place among the kinds of one pair of edges. */
const PLAIN_KIND = 1 + SOFTNESS.length;
/** The grid usually reaches this share of the scale's half-range past both limits. */
export const USUAL_REACH = 0.3;
/** No more grid points than this over the scale: a longer scale is laid out more coarsely. */
const FINEST = 80;

export interface BandModel extends Experiment {
  readonly scale: Scale;
  readonly arrows: boolean;
  readonly values: readonly Steps[];
  /** Per hypothesis, in corrections: low edge, high edge, centre. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly centre: Float64Array;
  /** Per hypothesis: half the band, in steps of the scale. */
  readonly halfWidth: Float64Array;
  /** Per hypothesis: 1 where the arrows point against the body's setting. */
  readonly reversed: Uint8Array;
  /** Per hypothesis: a number for all that stays when only the focus is turned (width, softness, grades, sense of the arrows). */
  readonly shape: Int32Array;
  /** One hypothesis for each pair of edges, the one of middling softness and grades: enough to compare stories with. */
  readonly isPlain: (hypothesis: number) => boolean;
  /** The same with every softness. */
  readonly isOfPlainGrades: (hypothesis: number) => boolean;
}

/**
 * Lays out the hypotheses for a scale. `arrows`: the body shows rangefinder arrows; `lapse`: the share of spoilt holds;
 * `reach`: how far past both limits an edge may lie, as a share of the half-range. A shape has one number whatever the reach.
 */
export function bandModel(scale: Scale, arrows: boolean, lapse: number, reach = USUAL_REACH): BandModel {
  const values = valuesOf(scale);
  const fine = Math.max(1, Math.min(2, Math.floor(FINEST / (values.length - 1))));
  const margin = Math.ceil(reach * halfRange(scale)) * fine;
  const points = (values.length - 1) * fine + 1 + 2 * margin;
  const senses = arrows ? 2 : 1;
  const perPair = SOFTNESS.length * DARK_FROM.length * senses;
  const count = ((points * (points - 1)) / 2) * perPair;

  const lowAt = new Int16Array(count);
  const highAt = new Int16Array(count);
  const softness = new Uint8Array(count);
  const darkFrom = new Uint8Array(count);
  const reversed = new Uint8Array(count);
  const shape = new Int32Array(count);
  let h = 0;
  for (let a = 0; a < points; a++) {
    for (let b = a + 1; b < points; b++) {
      for (let kind = 0; kind < perPair; kind++) {
        lowAt[h] = a;
        highAt[h] = b;
        softness[h] = kind % SOFTNESS.length;
        darkFrom[h] = Math.floor(kind / SOFTNESS.length) % DARK_FROM.length;
        reversed[h] = Math.floor(kind / (SOFTNESS.length * DARK_FROM.length));
        shape[h] = (b - a) * perPair + kind;
        h++;
      }
    }
  }
  const correctionAt = (point: number): number => scale.min + ((point - margin) / fine) * scale.step;
  const low = Float64Array.from(lowAt, correctionAt);
  const high = Float64Array.from(highAt, correctionAt);

  // Tables over the distance between grid points, indexed from 0; wide enough for values off the scale, too.
  const middle = 2 * points;
  const distances = Array.from({ length: 2 * middle + 1 }, (_, index) => (index - middle) / fine);
  const inside = SOFTNESS.map((s) => Float64Array.from(distances, (distance) => ogive(distance / s)));
  const grading = DARK_FROM.map((dark) => gradeTables(distances, dark));

  return {
    scale,
    arrows,
    values,
    low,
    high,
    centre: low.map((edge, index) => (edge + high[index]!) / 2),
    halfWidth: low.map((edge, index) => (high[index]! - edge) / (2 * scale.step)),
    reversed,
    shape,
    isPlain: (hypothesis) => hypothesis % perPair === PLAIN_KIND,
    isOfPlainGrades: (hypothesis) => Math.floor((hypothesis % perPair) / SOFTNESS.length) === Math.floor(PLAIN_KIND / SOFTNESS.length),
    hypotheses: count,
    stimuli: values.length,
    outcomes: outcomeCount(arrows),
    likelihoods(stimulus, which, into) {
      const n = which.length;
      const at = margin + stimulus * fine;
      for (let k = 0; k < n; k++) {
        const hypothesis = which[k]!;
        const fromLow = at - lowAt[hypothesis]!;
        const toHigh = highAt[hypothesis]! - at;
        const edge = inside[softness[hypothesis]!]!;
        const held = (1 - lapse) * edge[fromLow + middle]! * edge[toHigh + middle]! + lapse * LAPSE_IN;
        into[k] = held;
        const outside = middle - Math.min(fromLow, toHigh);
        const grades = grading[darkFrom[hypothesis]!]!;
        if (!arrows) {
          for (let g = 0; g < GRADES.length; g++) into[(1 + g) * n + k] = (1 - held) * grades[g]![outside]!;
          continue;
        }
        const above = chanceOfAbove(toHigh - fromLow, reversed[hypothesis] === 1);
        for (let g = 0; g < GRADES.length; g++) {
          const out = (1 - held) * grades[g]![outside]!;
          into[(1 + 2 * g) * n + k] = out * above;
          into[(2 + 2 * g) * n + k] = out * (1 - above);
        }
      }
    },
  };
}

function gradeTables(distances: readonly number[], dark: number): Float64Array[] {
  const past = (boundary: number) => (outside: number) =>
    ogive((outside - boundary) / (GRADE_BLUR + GRADE_BLUR_SHARE * boundary));
  const beyondNear = past(NEAR_UP_TO);
  const beyondFlicker = past(dark);
  const shares = distances.map((outside) => {
    const far = Math.min(beyondNear(outside), beyondFlicker(outside));
    return [1 - beyondNear(outside), beyondNear(outside) - far, far];
  });
  return GRADES.map((_, grade) =>
    Float64Array.from(shares, (share) => (1 - STRAY_GRADE) * share[grade]! + STRAY_GRADE / GRADES.length),
  );
}

function chanceOfAbove(towards: number, reversed: boolean): number {
  if (towards === 0) return 0.5;
  return towards > 0 !== reversed ? SIDE_RIGHT : 1 - SIDE_RIGHT;
}
