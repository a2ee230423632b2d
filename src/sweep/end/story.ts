// Other stories of the same holds than one band that stays: some neighbouring holds were misjudged (tired eyes err in a
// row), the band drifts while body and lens warm, or it lies elsewhere after the value was turned up than after it was
// turned down. Each is weighed against the one band (Kass & Raftery 1995, J. Am. Stat. Assoc. 90:773), averaged over what
// nobody knows of it; how often each happens: common practice, no source.
import { from, joined, told, weighed, type Read } from '../belief/accounts.ts';
import type { Lights } from '../belief/bandModel.ts';
import { weigh, type Belief } from '../belief/belief.ts';
import type { Posterior } from '../belief/grid.ts';
import { outcomesOf } from '../belief/observation.ts';
import type { Hold } from '../hold.ts';
import { oneBand, product, quickLook, sum, wereExpected } from './drift.ts';

export type Timed = Read & Pick<Hold, 'predictive' | 'began'>;

/** `from` and `to`: places in the list of holds. `rate`: steps a minute. `size`: steps to the side the value was moved to. */
export type Story =
  | { readonly is: 'misjudged'; readonly from: number; readonly to: number }
  | { readonly is: 'drifting'; readonly rate: number }
  | { readonly is: 'play'; readonly size: number };

/** What can look like a focus that moved. */
export type Rival = Exclude<Story['is'], 'misjudged'>;

/** A story with its odds against one band that stays. */
export interface Weighed<One extends Story = Story> {
  readonly story: One;
  readonly bayesFactor: number;
  /** Where the band lies by all the stories of its kind together. */
  readonly bands: Posterior;
}

/** One story, with the weight it gives to each band worth a look. */
interface Told {
  readonly story: Story;
  readonly weights: Float64Array;
}

/** Odds at which another story than one band is believed: such things happen in one sweep of twenty (common practice, no source). */
const BELIEVED = 20;
/** Fewer holds tell no story. */
const FEWEST = 6;
/** How many holds in a row may be misjudged, and what is then told of them: as often in as out. */
const LENGTHS = [2, 3, 4];
const TOLD_IN = 0.5;
const DRIFTS = [-1.4, -0.7, 0.7, 1.4].map((rate): Story => ({ is: 'drifting', rate }));
const PLAYS = [-1, -0.5, 0.5, 1].map((size): Story => ({ is: 'play', size }));

/** Every kind of story that can be told of these holds, the likeliest first; none while one band explains them well. */
export function storiesOf(belief: Belief, holds: readonly Timed[]): Weighed[] {
  if (holds.length < FEWEST || holds.every(({ reading }) => reading.counts === 'out')) return [];
  if (wereExpected(holds)) return [];
  const { bands, before, whole } = oneBand(belief, holds, worthALook(belief, holds));
  const after = from(belief, bands, holds, 0);
  const misjudged = LENGTHS.flatMap((length) =>
    Array.from({ length: holds.length - length }, (_, at) => at + 1).map((first): Told => {
      const spoilt = holds.slice(first, first + length).reduce((product, hold) => product * chanceIfMisjudged(hold), 1);
      const left = joined(belief, bands, before[first]!, after[first + length]!);
      return { story: { is: 'misjudged', from: first, to: first + length - 1 }, weights: left.map((weight) => spoilt * weight) };
    }),
  );
  const shifted = (story: Story): Told => {
    const shifts = shiftsUnder(story, holds);
    const lights = holds.reduce<Lights>((now, hold, at) => told(belief, now, hold, shifts[at] ?? 0), bands);
    return { story, weights: weighed(belief, bands, lights) };
  };
  const kinds = [misjudged, DRIFTS.map(shifted), PLAYS.map(shifted)];
  return kinds.flatMap((kind) => averaged(kind, bands.which, whole) ?? []).toSorted((a, b) => b.bayesFactor - a.bayesFactor);

  function chanceIfMisjudged({ reading }: Read): number {
    if (reading.counts === 'in') return TOLD_IN;
    const outs = belief.model.outcomes - 1;
    return ((1 - TOLD_IN) * outcomesOf(reading, belief.model.arrows).length) / outs;
  }
}

/** The bands that explain the holds better than hardly by any of the stories. */
function worthALook(belief: Belief, holds: readonly Timed[]): Int32Array {
  const { which, start, chances, worthy } = quickLook(belief);
  const most = new Float64Array(which.length);
  const allow = (weights: Float64Array): void => weights.forEach((weight, k) => (most[k] = Math.max(most[k]!, weight)));
  const still = holds.map((hold) => chances(hold, 0));
  const before: Float64Array[] = [start];
  for (const chance of still) before.push(product(before.at(-1)!, chance));
  let after: Float64Array = new Float64Array(which.length).fill(1);
  for (let k = holds.length; k > 0; k--) {
    for (const length of LENGTHS) if (k - length > 0) allow(product(before[k - length]!, after));
    after = product(after, still[k - 1]!);
  }
  for (const story of [...DRIFTS, ...PLAYS]) {
    const shifts = shiftsUnder(story, holds);
    allow(holds.reduce<Float64Array>((weights, hold, at) => product(weights, chances(hold, shifts[at] ?? 0)), start));
  }
  return worthy(most);
}

/** The likeliest story, where it is believed although it is rare. */
export const believed = ([first]: readonly Weighed[]): Weighed | null => (first && first.bayesFactor >= BELIEVED ? first : null);

/** The likeliest of its kind, with the odds of the kind and what it leaves of the band. */
function averaged(kind: readonly Told[], which: Int32Array, whole: number): Weighed | null {
  const odds = kind.map(({ weights }) => sum(weights) / whole);
  const best = kind[odds.indexOf(Math.max(...odds))];
  if (!best) return null;
  const together = new Float64Array(which.length);
  for (const { weights } of kind) for (let k = 0; k < together.length; k++) together[k]! += weights[k]!;
  const all = sum(together);
  return { story: best.story, bayesFactor: all / whole / kind.length, bands: { which, mass: together.map((weight) => weight / all) } };
}

/** Where the band lay at each hold, in steps above where it lies now; null for a hold that does not count. */
function shiftsUnder(story: Story, holds: readonly Timed[]): (number | null)[] {
  const now = holds.at(-1)?.began ?? 0;
  switch (story.is) {
    case 'misjudged':
      return holds.map((_, at) => (at >= story.from && at <= story.to ? null : 0));
    case 'drifting':
      return holds.map(({ began }) => (-story.rate * (now - began)) / 60_000);
    case 'play': {
      let way = 0;
      return holds.map(({ value }, at) => {
        const last = holds[at - 1]?.value ?? 0;
        if (value !== last) way = value > last ? 1 : -1;
        return way * story.size;
      });
    }
  }
}

/** What the holds say where the story is true: of the band as it lies now, and with play, between its two places. */
export function retold(belief: Belief, holds: readonly Timed[], story: Story): Belief {
  const shifts = shiftsUnder(story, holds);
  return holds.reduce<Belief>(
    (now, { value, reading }, at) => {
      const shift = shifts[at] ?? null;
      return shift === null ? now : weigh(now, value, reading, shift).belief;
    },
    { ...belief, posterior: belief.opening },
  );
}

/** The values that a story of misjudged holds puts in doubt, and that were not held again since. */
export function doubtedValues(holds: readonly Timed[], { from, to }: Extract<Story, { is: 'misjudged' }>): Hold['value'][] {
  const since = holds.slice(to + 1).map(({ value }) => value);
  return [...new Set(holds.slice(from, to + 1).map(({ value }) => value))].filter((value) => !since.includes(value));
}
