// Every band that could be true of one situation, and what each would show: two edges on a half-step grid that
// reaches past both limits (so that a clipped band is a hypothesis and not an accident). What the light does beside that is
// told in two parts that know nothing of each other once the band is given: how softly its ends give way, which says
// whether a hold is in, and the lamp (with the sense of the arrows), which says how a failing one looks. So each band
// carries one small table for either part instead of one for their product, and both are averaged over exactly
// (Rao-Blackwell: Casella & Robert 1996, Biometrika 83:81).
import { halfRange, valuesOf, type Scale } from '../scale.ts';
import type { Steps } from '../../units.ts';
import { EDGES, SOFT } from './edges.ts';
import { BOUNDARIES, gradesOf, LAMPS, strayed, zonesAt } from './lamp.ts';
import { ogive } from './normalOgive.ts';
import { GRADES, IN, outcomeCount } from './observation.ts';

/** Share of holds that are spoilt (a blink, a nudge of the camera), and of those the share that still look in. */
export const USUAL_LAPSE = 0.02;
const LAPSE_IN = 0.1;
/** How often an arrow points to the side its sense says. */
export const SIDE_RIGHT = 0.95;
/** A body whose arrows point against its setting: rare, but cheaper to expect than to be misled by. */
const REVERSED = 0.05;
/** The grid usually reaches this share of the scale's half-range past both limits. */
export const USUAL_REACH = 0.3;
/** Grid points in one value of the scale: on the value, and half-way to the next. */
const POINTS = 2;
/** With more grid points than this over the scale, edges are laid only between the values. */
const FINEST = 80;

/** Some bands with, for each of them, what is known of its light: the weights of one band's kinds sum to 1. */
export interface Lights {
  readonly which: Int32Array;
  /** `edges[k * model.edgeKinds + kind]` belongs to band `which[k]`; `lamp` likewise. */
  readonly edges: Float64Array;
  readonly lamp: Float64Array;
}

export interface BandModel {
  readonly scale: Scale;
  readonly arrows: boolean;
  readonly values: readonly Steps[];
  readonly hypotheses: number;
  readonly stimuli: number;
  readonly outcomes: number;
  /** Per band, in corrections: low edge, high edge, centre. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly centre: Float64Array;
  /** Per band: half of it, in steps of the scale. */
  readonly halfWidth: Float64Array;
  /** Per band: its width in grid points, the same number whatever the reach. */
  readonly width: Int16Array;
  /** Do both edges lie between two values? */
  readonly isBetween: (hypothesis: number) => boolean;
  readonly edgeKinds: number;
  readonly lampKinds: number;
  /** The shares of the kinds before the first hold. */
  readonly edgeShares: Float64Array;
  readonly lampShares: Float64Array;
  /** The same, were no kind likelier than another. */
  readonly evenEdges: Float64Array;
  readonly evenLamps: Float64Array;
  /** Multiplies the tables by the chance each kind gives to one of the outcomes `seen`; a stimulus may lie off the scale and between values. */
  readonly weigh: (stimulus: number, seen: readonly number[], lights: Lights) => void;
  /** Writes P(outcome) of each band at a stimulus, one outcome after another: `into[outcome * n + k]` belongs to band `which[k]`. */
  readonly predicting: (lights: Lights) => (stimulus: number, into: Float64Array) => void;
  /** One light for all bands, of kinds in these shares. */
  readonly averaged: (edges: Float64Array, lamp: Float64Array) => AverageLight;
}

/** The chance each band gives to one of the outcomes `seen`, all with the same light. */
export type AverageLight = (stimulus: number, seen: readonly number[], which: Int32Array) => Float64Array;

/**
 * Lays out the bands for a scale. `arrows`: the body shows rangefinder arrows; `lapse`: the share of spoilt holds;
 * `reach`: how far past both limits an edge may lie, as a share of the half-range.
 */
export function bandModel(scale: Scale, arrows: boolean, lapse: number, reach = USUAL_REACH): BandModel {
  const values = valuesOf(scale);
  const margin = Math.ceil(reach * halfRange(scale)) * POINTS;
  const points = (values.length - 1) * POINTS + 1 + 2 * margin;
  // Every other point lies between two values, where an edge that never wavers can be told from its neighbours.
  const onlyBetween = (values.length - 1) * POINTS > FINEST;
  const [first, apart] = onlyBetween ? [1, POINTS] : [0, 1];
  const edges = Math.ceil((points - first) / apart);
  const count = (edges * (edges - 1)) / 2;
  const lowAt = new Int16Array(count);
  const highAt = new Int16Array(count);
  let h = 0;
  for (let a = first; a < points; a += apart) {
    for (let b = a + apart; b < points; b += apart) {
      lowAt[h] = a;
      highAt[h++] = b;
    }
  }
  const correctionAt = (point: number): number => scale.min + ((point - margin) / POINTS) * scale.step;
  const low = Float64Array.from(lowAt, correctionAt);
  const high = Float64Array.from(highAt, correctionAt);

  // Tables over the distance between grid points, indexed from 0; wide enough for values off the scale, too.
  const middle = 2 * points;
  const distances = Array.from({ length: 2 * middle + 1 }, (_, index) => (index - middle) / POINTS);
  const inside = SOFT.map((s) => Float64Array.from(distances, (distance) => ogive(distance / s)));
  const lamps = LAMPS.length;
  const senses = arrows ? 2 : 1;
  const edgeKinds = EDGES.length;
  const lampKinds = lamps * senses;
  // Kinds of edges go through the softness of the low end, and for each through that of the high one.
  const lowKind = Uint8Array.from(EDGES, (kind) => kind.low);
  const highKind = Uint8Array.from(EDGES, (kind) => kind.high);
  // grading[distance * (lamps * grades) + grade * lamps + lamp]
  const perDistance = lamps * GRADES.length;
  const grading = new Float64Array(distances.length * perDistance);
  const zones = distances.map(zonesAt);
  LAMPS.forEach((one, lamp) =>
    zones.forEach((zone, at) => gradesOf(one, zone).forEach((chance, grade) => (grading[at * perDistance + grade * lamps + lamp] = chance))),
  );
  const nearAt = Float64Array.from(zones, ({ near }) => near);
  const darkAt = Float64Array.from({ length: distances.length * BOUNDARIES }, (_, at) => zones[Math.floor(at / BOUNDARIES)]!.dark[at % BOUNDARIES]!);
  const senseShares = arrows ? [1 - REVERSED, REVERSED] : [1];

  const held = new Float64Array(edgeKinds);
  const looking = new Float64Array(lamps);
  const heldAt = (fromLow: number, toHigh: number): void => {
    for (let kind = 0; kind < edgeKinds; kind++) {
      const both = inside[lowKind[kind]!]![fromLow + middle]! * inside[highKind[kind]!]![toHigh + middle]!;
      held[kind] = (1 - lapse) * both + lapse * LAPSE_IN;
    }
  };
  const pointOf = (stimulus: number): number => margin + Math.round(stimulus * POINTS);
  /** P(the arrow says that the centre lies above), for each sense. */
  const aboveAs = (towards: number, sense: number): number => (towards === 0 ? 0.5 : towards > 0 === (sense === 0) ? SIDE_RIGHT : 1 - SIDE_RIGHT);

  return {
    scale,
    arrows,
    values,
    hypotheses: count,
    stimuli: values.length,
    outcomes: outcomeCount(arrows),
    low,
    high,
    centre: low.map((edge, index) => (edge + high[index]!) / 2),
    halfWidth: low.map((edge, index) => (high[index]! - edge) / (2 * scale.step)),
    width: lowAt.map((a, index) => highAt[index]! - a),
    isBetween: (hypothesis) => lowAt[hypothesis]! % POINTS !== 0 && highAt[hypothesis]! % POINTS !== 0,
    edgeKinds,
    lampKinds,
    edgeShares: Float64Array.from(EDGES, ({ share }) => share),
    lampShares: Float64Array.from({ length: lampKinds }, (_, kind) => LAMPS[kind % lamps]!.share * senseShares[Math.floor(kind / lamps)]!),
    evenEdges: Float64Array.from(EDGES, ({ even }) => even),
    evenLamps: Float64Array.from({ length: lampKinds }, (_, kind) => senseShares[Math.floor(kind / lamps)]! / lamps),
    averaged(edges, lamp) {
      const atLow = new Float64Array(distances.length);
      const atHigh = new Float64Array(distances.length);
      const looks = new Float64Array(distances.length * GRADES.length);
      const lowShares = new Float64Array(SOFT.length);
      const highShares = new Float64Array(SOFT.length);
      edges.forEach((share, kind) => {
        lowShares[lowKind[kind]!]! += share;
        highShares[highKind[kind]!]! += share;
      });
      for (let at = 0; at < distances.length; at++) {
        for (let soft = 0; soft < SOFT.length; soft++) {
          atLow[at]! += lowShares[soft]! * inside[soft]![at]!;
          atHigh[at]! += highShares[soft]! * inside[soft]![at]!;
        }
      }
      for (let at = 0; at < looks.length; at++) {
        for (let kind = 0; kind < lampKinds; kind++) looks[at]! += lamp[kind]! * grading[at * lamps + (kind % lamps)]!;
      }
      const reversed = arrows ? lamp.subarray(lamps).reduce((sum, share) => sum + share, 0) : 0;
      return (stimulus, seen, which) => {
        const at = pointOf(stimulus);
        const chances = new Float64Array(which.length);
        for (let k = 0; k < which.length; k++) {
          const fromLow = at - lowAt[which[k]!]!;
          const toHigh = highAt[which[k]!]! - at;
          const isIn = (1 - lapse) * atLow[fromLow + middle]! * atHigh[toHigh + middle]! + lapse * LAPSE_IN;
          const grades = (middle - Math.min(fromLow, toHigh)) * GRADES.length;
          const above = aboveAs(toHigh - fromLow, 0) * (1 - reversed) + aboveAs(toHigh - fromLow, 1) * reversed;
          for (const outcome of seen) {
            if (outcome === IN) chances[k]! += isIn;
            else if (!arrows) chances[k]! += (1 - isIn) * looks[grades + outcome - 1]!;
            else chances[k]! += (1 - isIn) * looks[grades + ((outcome - 1) >> 1)]! * (outcome % 2 === 1 ? above : 1 - above);
          }
        }
        return chances;
      };
    },
    weigh(stimulus, seen, { which, edges, lamp }) {
      const at = pointOf(stimulus);
      const isIn = seen.includes(IN);
      // Which sides were told with each grade: 1 above (or no arrows at all), 2 below, 3 either.
      const sides = GRADES.map((_, grade) =>
        seen.reduce((told, outcome) => (Math.floor((outcome - 1) / senses) === grade && outcome !== IN ? told | (1 << ((outcome - 1) % senses)) : told), 0),
      );
      for (let k = 0; k < which.length; k++) {
        const fromLow = at - lowAt[which[k]!]!;
        const toHigh = highAt[which[k]!]! - at;
        heldAt(fromLow, toHigh);
        const first = k * edgeKinds;
        if (isIn) {
          for (let kind = 0; kind < edgeKinds; kind++) edges[first + kind]! *= held[kind]!;
          continue;
        }
        for (let kind = 0; kind < edgeKinds; kind++) edges[first + kind]! *= 1 - held[kind]!;
        const grades = (middle - Math.min(fromLow, toHigh)) * perDistance;
        for (let sense = 0; sense < senses; sense++) {
          const above = arrows ? aboveAs(toHigh - fromLow, sense) : 1;
          const row = k * lampKinds + sense * lamps;
          looking.fill(0);
          for (let grade = 0; grade < GRADES.length; grade++) {
            const told = sides[grade]!;
            if (told === 0) continue;
            const side = told === 3 ? 1 : told === 1 ? above : 1 - above;
            const from = grades + grade * lamps;
            for (let one = 0; one < lamps; one++) looking[one]! += side * grading[from + one]!;
          }
          for (let one = 0; one < lamps; one++) lamp[row + one]! *= looking[one]!;
        }
      }
    },
    predicting({ which, edges, lamp }) {
      const n = which.length;
      // What the lamps of a band come to: late when near; for each boundary, late when between, and dark beyond it.
      const perBand = 1 + 2 * BOUNDARIES;
      const told = new Float64Array(n * perBand);
      const asSet = new Float64Array(n).fill(1);
      for (let k = 0; k < n; k++) {
        for (let kind = 0; kind < lampKinds; kind++) {
          const { lateNear, lateBetween, dark } = LAMPS[kind % lamps]!;
          const share = lamp[k * lampKinds + kind]!;
          told[k * perBand]! += share * lateNear;
          told[k * perBand + 1 + dark]! += share * lateBetween;
          told[k * perBand + 1 + BOUNDARIES + dark]! += share;
          if (kind >= lamps) asSet[k]! -= share;
        }
      }
      return (stimulus, into) => {
        const at = pointOf(stimulus);
        for (let k = 0; k < n; k++) {
          const fromLow = at - lowAt[which[k]!]!;
          const toHigh = highAt[which[k]!]! - at;
          let both = 0;
          for (let kind = 0, low = 0; low < SOFT.length; low++) {
            let high = 0;
            for (let soft = 0; soft < SOFT.length; soft++, kind++) high += edges[k * edgeKinds + kind]! * inside[soft]![toHigh + middle]!;
            both += high * inside[low]![fromLow + middle]!;
          }
          const isIn = (1 - lapse) * both + lapse * LAPSE_IN;
          into[k] = isIn;
          const outside = middle - Math.min(fromLow, toHigh);
          const near = nearAt[outside]!;
          let late = near * told[k * perBand]!;
          let dark = 0;
          for (let one = 0; one < BOUNDARIES; one++) {
            const far = darkAt[outside * BOUNDARIES + one]!;
            late += (1 - near - far) * told[k * perBand + 1 + one]!;
            dark += far * told[k * perBand + 1 + BOUNDARIES + one]!;
          }
          const out = 1 - isIn;
          if (!arrows) {
            into[n + k] = out * strayed(late);
            into[2 * n + k] = out * strayed(1 - late - dark);
            into[3 * n + k] = out * strayed(dark);
            continue;
          }
          const above = aboveAs(toHigh - fromLow, 0) * asSet[k]! + aboveAs(toHigh - fromLow, 1) * (1 - asSet[k]!);
          const shares = [strayed(late), strayed(1 - late - dark), strayed(dark)];
          for (let grade = 0; grade < GRADES.length; grade++) {
            into[(1 + 2 * grade) * n + k] = out * shares[grade]! * above;
            into[(2 + 2 * grade) * n + k] = out * shares[grade]! * (1 - above);
          }
        }
      };
    },
  };
}
