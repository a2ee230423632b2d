// A band that is not contiguous: values inside it fail. The same bands are weighed with one hole of unknown place and
// width, and without. Where the hole is, the light fails whatever the edges say; what it shows there: common practice, no
// source.
import type { Belief } from '../belief/belief.ts';
import { GRADES, IN, outcomesOf } from '../belief/observation.ts';
import { bandsThat, likelihoods, unmoved, type Bands, type Read } from '../end/drift.ts';
import type { Hole } from './trouble.ts';

/** In the hole: how often it holds all the same, and how it fails. */
const HOLDS_IN_IT = 0.15;
const FAILS_IN_IT = { near: 0.4, flicker: 0.5, dark: 0.1 };
/** Values that a hole may take. */
const WIDTHS = [1, 2, 3, 4];
/** One failure may be a blink; a gap fails again. */
const FEWEST = 2;
/** Bands less likely than this share of the likeliest, by the holds outside the gap, are left out. */
const SLIGHT = 1e-7;

/** The hole that most likely is there; null where fewer failures than that lie between two values that held. */
export function holeIn(belief: Belief, holds: readonly Read[]): Hole | null {
  const { model } = belief;
  const held = holds.filter(({ reading }) => reading.counts === 'in').map(({ value }) => value);
  const [lowest, highest] = [Math.min(...held), Math.max(...held)];
  const failed = holds.filter(({ value, reading }) => reading.counts === 'out' && value > lowest && value < highest);
  if (failed.length < FEWEST) return null;

  const { which, weight } = explaining(belief, holds.filter((hold) => !failed.includes(hold)));
  const chances = holds.map((hold) => likelihoods(belief, which, hold, 0));
  const whole = chances.reduce((product, chance) => product.map((each, k) => each * chance[k]!), weight);
  const { step } = model.scale;

  let total = 0;
  let best: { weight: number; from: number; to: number } | null = null;
  for (const width of WIDTHS) {
    for (const first of model.values) {
      const last = first + (width - 1) * step;
      const inside = [...holds.keys()].filter((at) => holds[at]!.value >= first && holds[at]!.value <= last);
      const failing = failed.filter(({ value }) => value >= first && value <= last);
      if (first <= lowest || last >= highest || failing.length < FEWEST) continue;
      const likely = inside.reduce((chance, at) => chance * chanceInHole(holds[at]!, model.arrows), 1);
      let weight = 0;
      for (let k = 0; k < which.length; k++) {
        const [low, high] = [model.low[which[k]!]!, model.high[which[k]!]!];
        if (low > first - step || high < last + step) continue;
        const replaced = inside.reduce((chance, at) => chance * chances[at]![k]!, 1);
        const room = Math.max(1, Math.floor((high - low) / step) - width);
        weight += (whole[k]! / replaced) * (likely / room / WIDTHS.length);
      }
      total += weight;
      if (!best || weight > best.weight) best = { weight, from: first, to: last };
    }
  }
  if (!best) return null;
  const { from, to } = best;
  const values = failed.map(({ value }) => value).filter((value) => value >= from && value <= to);
  const bayesFactor = total / whole.reduce((sum, weight) => sum + weight, 0);
  const ordered = values.toSorted((a, b) => a - b);
  return { trouble: 'hole in the band', bayesFactor, from: ordered[0]!, to: ordered.at(-1)! };
}

/** The bands by which the holds outside any gap are not wholly unlikely, with the weight they had before the first hold. */
function explaining(belief: Belief, holds: readonly Read[]): Bands {
  const { which, weight } = bandsOf(belief);
  const likely = unmoved(belief, { which, weight }, holds).at(-1) ?? weight;
  const floor = likely.reduce((most, each) => Math.max(most, each), 0) * SLIGHT;
  const places = [...likely.keys()].filter((k) => likely[k]! > floor);
  return { which: Int32Array.from(places, (k) => which[k]!), weight: Float64Array.from(places, (k) => weight[k]!) };
}

/** Every softness of every pair of edges. */
const bandsOf = bandsThat(({ isOfPlainGrades }) => isOfPlainGrades);

/** The arrows in a hole tell nothing. */
function chanceInHole({ reading }: Read, arrows: boolean): number {
  if (reading.counts === 'in') return HOLDS_IN_IT;
  const sides = arrows ? 2 : 1;
  return outcomesOf(reading, arrows)
    .filter((outcome) => outcome !== IN)
    .reduce((sum, outcome) => {
      const grade = GRADES[Math.floor((outcome - 1) / sides)];
      return sum + (grade ? ((1 - HOLDS_IN_IT) * FAILS_IN_IT[grade]) / sides : 0);
    }, 0);
}
