// A light that does not care about the correction. Three stories, each one share of every grade at all values, against the
// healthy band. A story's shares are not known, so they are averaged over a Dirichlet distribution, which makes each hold's
// chance that of an urn (Johnson & Kotz 1977, Urn Models, ch. 4; widths of the distributions: common practice, no source).
import type { Belief } from '../belief/belief.ts';
import type { Hold } from '../hold.ts';
import type { Scale } from '../scale.ts';
import type { Grade, Reading } from '../verdict.ts';
import type { SameEverywhere } from './trouble.ts';

type Seen = 'in' | Exclude<Grade, 'untold'>;
type Urn = Readonly<Record<Seen, number>>;

/** What is expected of a hold before the first, as so many holds seen before. */
const STORIES: Record<SameEverywhere['trouble'], Urn> = {
  'flickers everywhere': { in: 0.5, near: 3, flicker: 9, dark: 1 },
  'never lights': { in: 0.2, near: 0.5, flicker: 0.8, dark: 12 },
  'lights everywhere': { in: 12, near: 0.8, flicker: 0.5, dark: 0.2 },
};
const LOOKS: Record<SameEverywhere['trouble'], readonly Seen[]> = {
  'flickers everywhere': ['flicker', 'near'],
  'never lights': ['dark'],
  'lights everywhere': ['in'],
};
/** The share of the scale that the holds must reach over. */
const REACH: Record<SameEverywhere['trouble'], number> = { 'flickers everywhere': 0.3, 'never lights': 0.6, 'lights everywhere': 1 };
/** Sooner, a narrow band or one at a limit may have been missed so far. */
const FEWEST = 8;
/** The share of values that must look so each time; a broken or wavering band may refute the healthy one as strongly. */
const MOSTLY = 0.8;
const ALL: readonly Seen[] = ['in', 'near', 'flicker', 'dark'];
/** How often an arrow points towards a place, where it points to one at all. */
const TOWARDS = 0.95;

type WeighedHold = Pick<Hold, 'value' | 'reading' | 'predictive'>;

/** The likeliest of the three; null before enough holds reach over the scale. */
export function sameEverywhere({ model }: Pick<Belief, 'model'>, holds: readonly WeighedHold[]): SameEverywhere | null {
  if (holds.length < FEWEST) return null;
  const healthy = holds.reduce((sum, { predictive }) => sum + Math.log(predictive), 0);
  const values = new Set(holds.map(({ value }) => value));
  const sides = Math.log(chanceOfSides(model.values, holds));
  const told = (Object.keys(STORIES) as SameEverywhere['trouble'][])
    .filter((trouble) => reachesOver(model.scale, holds, trouble))
    .map((trouble): SameEverywhere => {
      const others = new Set(holds.filter(({ reading }) => !seenAs(reading).every((seen) => LOOKS[trouble].includes(seen))).map(({ value }) => value));
      const bayesFactor = Math.exp(chanceOfLights(STORIES[trouble], holds) + sides - healthy);
      return { trouble, bayesFactor, alike: values.size - others.size, of: values.size };
    });
  return told.filter(({ alike, of }) => alike >= MOSTLY * of).toSorted((a, b) => b.bayesFactor - a.bayesFactor)[0] ?? null;
}

/** Far enough apart to say everywhere; what holds at every value must hold at both limits. */
function reachesOver({ min, max }: Scale, holds: readonly WeighedHold[], trouble: SameEverywhere['trouble']): boolean {
  const values = holds.map(({ value }) => value);
  return Math.max(...values) - Math.min(...values) >= REACH[trouble] * (max - min);
}

/** Logarithm of the chance of all lights, in their order, drawn from the urn. */
function chanceOfLights(story: Urn, holds: readonly WeighedHold[]): number {
  const urn = { ...story };
  let log = 0;
  for (const { reading } of holds) {
    const seen = seenAs(reading);
    const whole = sumOf(urn, ALL);
    const part = sumOf(urn, seen);
    log += Math.log(part / whole);
    for (const one of seen) urn[one] += urn[one] / part;
  }
  return log;
}

const sumOf = (urn: Urn, seen: readonly Seen[]): number => seen.reduce((sum, one) => sum + urn[one], 0);

/** A failure told without its grade stands for each of them. */
function seenAs(reading: Reading): readonly Seen[] {
  if (reading.counts === 'in') return ['in'];
  return reading.grade === 'untold' ? ['near', 'flicker', 'dark'] : [reading.grade];
}

/** The arrows beside such a light may still point to the focus, wherever it is, or to either side by chance. */
function chanceOfSides(places: readonly number[], holds: readonly WeighedHold[]): number {
  const told = holds.flatMap(({ value, reading }) =>
    reading.counts === 'out' && reading.side !== 'untold' ? [{ value, above: reading.side === 'above' }] : [],
  );
  const pointed = places.map((place) =>
    told.reduce((chance, { value, above }) => chance * (place === value ? 0.5 : place > value === above ? TOWARDS : 1 - TOWARDS), 1),
  );
  return (0.5 ** told.length + pointed.reduce((sum, chance) => sum + chance, 0) / places.length) / 2;
}
