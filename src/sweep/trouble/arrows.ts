// Do the arrows say what the lights say? The lights alone tell where the band is; four stories of the arrows are weighed on
// that: they point as the body is set, the other way round, one way and from some hold on the other, or by chance.
import type { Read } from '../belief/accounts.ts';
import { SIDE_RIGHT } from '../belief/bandModel.ts';
import { centreOf, weigh, type Belief } from '../belief/belief.ts';
import type { ArrowsContradict } from './trouble.ts';

/** Arrows against the lights, before the other stories are told at all. */
const FEWEST = 2;
/** Bands that the lights make less likely than this share of the likeliest are left out. */
const SLIGHT = 1e-6;

/** Null on a body without arrows, and while they agree. */
export function arrowsAgainst(belief: Belief, holds: readonly Read[]): ArrowsContradict | null {
  if (!belief.model.arrows || astray(belief, holds) < FEWEST) return null;
  const { which, mass } = byTheLights(belief, holds);
  const told = holds.flatMap(({ value, reading }) =>
    reading.counts === 'out' && reading.side !== 'untold' ? [{ value, above: reading.side === 'above' }] : [],
  );
  const floor = mass.reduce((most, each) => Math.max(most, each), 0) * SLIGHT;
  const story = { asSet: 0, round: 0, midway: 0, chance: 0 };
  for (let k = 0; k < mass.length; k++) {
    const weight = mass[k]!;
    if (weight <= floor) continue;
    const centre = belief.model.centre[which[k]!]!;
    const right = told.map(({ value, above }) => (centre === value ? 0.5 : centre > value === above ? SIDE_RIGHT : 1 - SIDE_RIGHT));
    const wrong = right.map((chance) => 1 - chance);
    story.asSet += weight * product(right);
    story.round += weight * product(wrong);
    story.midway += weight * turnedMidway(right, wrong);
    story.chance += weight * 0.5 ** told.length;
  }
  const stories = [
    { how: 'turned round', odds: story.round / story.asSet },
    { how: 'turned midway', odds: story.midway / story.asSet },
    { how: 'by chance', odds: story.chance / story.asSet },
  ] as const;
  const { how } = stories.reduce((likelier, next) => (next.odds > likelier.odds ? next : likelier));
  return { trouble: 'arrows contradict the lights', bayesFactor: stories.reduce((sum, { odds }) => sum + odds, 0) / stories.length, how };
}

/** Arrows that point away from where the centre is believed to be, by a step or more. */
function astray(belief: Belief, holds: readonly Read[]): number {
  const { mean } = centreOf(belief);
  const { step } = belief.model.scale;
  return holds.filter(
    ({ value, reading }) =>
      reading.counts === 'out' && reading.side !== 'untold' && Math.abs(mean - value) >= step && mean > value !== (reading.side === 'above'),
  ).length;
}

/** What is believed where no arrow was told. */
function byTheLights(belief: Belief, holds: readonly Read[]): Belief['posterior'] {
  return holds.reduce((now, { value, reading }) => weigh(now, value, reading.counts === 'out' ? { ...reading, side: 'untold' } : reading).belief, {
    ...belief,
    posterior: belief.opening,
  }).posterior;
}

/** As set up to some moment and the other way after it, or first the other way; averaged over the moment. */
function turnedMidway(right: readonly number[], wrong: readonly number[]): number {
  const moments = Array.from({ length: right.length - 1 }, (_, at) => at + 1);
  const sum = moments.reduce(
    (total, at) => total + product(right.slice(0, at)) * product(wrong.slice(at)) + product(wrong.slice(0, at)) * product(right.slice(at)),
    0,
  );
  return moments.length > 0 ? sum / 2 / moments.length : 0;
}

const product = (chances: readonly number[]): number => chances.reduce((all, chance) => all * chance, 1);
