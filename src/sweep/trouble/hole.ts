// A band that is not contiguous: values inside it fail. The same bands are weighed with one hole of unknown place and
// width, and without. Where the hole is, the light fails whatever the edges say; what it shows there: common practice, no
// source.
import { openingOf, told, weighed, type Read } from '../belief/accounts.ts';
import type { Lights } from '../belief/bandModel.ts';
import { weigh, type Belief } from '../belief/belief.ts';
import type { BandPosterior } from '../belief/lights.ts';
import { GRADES, IN, outcomesOf } from '../belief/observation.ts';
import { sum } from '../end/drift.ts';
import type { Hole } from './trouble.ts';

/** In the hole: how often it holds all the same, and how it fails. */
const HOLDS_IN_IT = 0.15;
const FAILS_IN_IT = { near: 0.4, flicker: 0.5, dark: 0.1 };
/** Values that a hole may take. */
const WIDTHS = [1, 2, 3, 4];
/** One failure may be a blink; a gap fails again. */
const FEWEST = 2;
/** Bands less likely than this share of the likeliest, by the holds outside the gap, are left out. */
const SLIGHT = 1e-4;

/** The hole that most likely is there; null where fewer failures than that lie between two values that held. */
export function holeIn(belief: Belief, holds: readonly Read[]): Hole | null {
  const { model } = belief;
  const held = holds.filter(({ reading }) => reading.counts === 'in').map(({ value }) => value);
  const [lowest, highest] = [Math.min(...held), Math.max(...held)];
  const failed = holds.filter(({ value, reading }) => reading.counts === 'out' && value > lowest && value < highest);
  if (failed.length < FEWEST) return null;

  const bands = explaining(
    belief,
    holds.filter((hold) => !failed.includes(hold)),
  );
  const { which } = bands;
  const whole = sum(weighedAfter(belief, bands, holds));
  const { step } = model.scale;

  let total = 0;
  let best: { weight: number; from: number; to: number } | null = null;
  // Gaps that hide the same holds leave the same weights.
  const without = new Map<string, Float64Array>();
  for (const width of WIDTHS) {
    for (const first of model.values) {
      const last = first + (width - 1) * step;
      const inside = holds.filter(({ value }) => value >= first && value <= last);
      const failing = failed.filter(({ value }) => value >= first && value <= last);
      if (first <= lowest || last >= highest || failing.length < FEWEST) continue;
      const key = inside.map((hold) => holds.indexOf(hold)).join(' ');
      const left =
        without.get(key) ??
        weighedAfter(
          belief,
          bands,
          holds.filter((hold) => !inside.includes(hold)),
        );
      without.set(key, left);
      const likely = inside.reduce((chance, hold) => chance * chanceInHole(hold, model.arrows), 1);
      let weight = 0;
      for (let k = 0; k < which.length; k++) {
        const [low, high] = [model.low[which[k]!]!, model.high[which[k]!]!];
        if (low > first - step || high < last + step) continue;
        const room = Math.max(1, Math.floor((high - low) / step) - width);
        weight += left[k]! * (likely / room / WIDTHS.length);
      }
      total += weight;
      if (!best || weight > best.weight) best = { weight, from: first, to: last };
    }
  }
  if (!best) return null;
  const { from, to } = best;
  const values = failed.map(({ value }) => value).filter((value) => value >= from && value <= to);
  const bayesFactor = total / whole;
  const ordered = values.toSorted((a, b) => a - b);
  return { trouble: 'hole in the band', bayesFactor, from: ordered[0]!, to: ordered.at(-1)! };
}

/** The bands by which the holds outside any gap are not wholly unlikely, as they were believed before the first hold. */
function explaining(belief: Belief, holds: readonly Read[]): BandPosterior {
  const { posterior } = holds.reduce((now, { value, reading }) => weigh(now, value, reading).belief, { ...belief, posterior: belief.opening });
  const floor = posterior.mass.reduce((most, each) => Math.max(most, each), 0) * SLIGHT;
  return openingOf(
    belief,
    posterior.which.filter((band, k) => posterior.mass[k]! > floor && belief.model.isBetween(band)),
  );
}

/** The weight of each band after these holds. */
function weighedAfter(belief: Belief, bands: BandPosterior, holds: readonly Read[]): Float64Array {
  const lights = holds.reduce<Lights>((now, hold) => told(belief, now, hold, 0), bands);
  return weighed(belief, bands, lights);
}

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
