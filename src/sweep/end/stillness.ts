// Before the finish is offered: had the focus moved during the sweep, would these holds have shown it? The story that
// one band made all the holds is weighed against the same band shifted at some moment, counting only the shifts that
// would leave the chosen value wrong. Holds that settle early on one side of the scale may never be tried again, and then
// the odds of a hidden harm stay near even; one early value held again tells most of it.
import { averageLight } from '../belief/averageLight.ts';
import { stimulusOf, type Belief } from '../belief/belief.ts';
import type { Steps } from '../../units.ts';
import { FEWEST, movedBy, movesOf, sum, type HoldTold } from './drift.ts';

/** What the holds so far say of a harm that nobody has noticed. */
export interface Stillness {
  /** Odds that the focus moved by a shift that hides best and harms, against one band throughout; even odds beforehand. */
  readonly odds: number;
  /** The hold after which it most likely moved, if it did. */
  readonly afterHold: number;
  /** The value that, held once more, best tells the two apart; null where the odds need no test. */
  readonly test: Steps | null;
}

/** Odds up to which no further hold is worth the person's time (found on simulated observers). */
const HARDLY = 0.2;

/** A value that lies further than this from the new centre, in steps, is harm. */
const HARM = 2;
/** Shifts that can hide and harm: larger ones are noticed by themselves. */
const SHIFTS = [3, 4];
/** Bands of less than this share of their story are left out when a further hold is looked at. */
const SLIGHT = 1e-4;

interface Bands {
  readonly which: Int32Array;
  readonly weight: Float64Array;
}

interface Story {
  readonly shift: number;
  readonly bands: Bands;
}

/** Weighs a hidden harm to the value `chosen`; moments at or before hold `trusted` are out of the question. */
export function stillnessOf(belief: Belief, holds: readonly HoldTold[], trusted: number, chosen: number): Stillness {
  const first = Math.max(FEWEST, trusted + 1);
  const last = holds.length - FEWEST;
  if (last < first) return { odds: 0, afterHold: 0, test: null };
  const moves = movesOf(
    belief,
    holds,
    first,
    last,
    SHIFTS.flatMap((size) => [-size, size]),
  );
  const { which } = moves.bands;
  const moments = last - first + 1;
  const afterHold = new Float64Array(holds.length);
  const stories = SHIFTS.map((size) => [-size, size].map((shift): Story => ({ shift, bands: harmed(shift) })));
  const oddsOf = (pair: readonly Story[]) => sum(Float64Array.from(pair, ({ bands }) => sum(bands.weight))) / 2 / moments / moves.whole;
  const odds = stories.map(oddsOf);
  const greatest = Math.max(...odds);
  const worst = stories[odds.indexOf(greatest)] ?? [];
  const test = greatest > HARDLY ? telling(belief, { which, weight: moves.still }, worst) : null;
  return { odds: greatest, afterHold: afterHold.indexOf(Math.max(...afterHold)), test };

  /** The bands as they lay before the shift, weighted by all moments at which it may have come, where it does harm. */
  function harmed(shift: number): Bands {
    const { centre, scale } = belief.model;
    const harms = (place: number): boolean => Math.abs((centre[which[place]!]! - chosen) / scale.step + shift) > HARM;
    const total = new Float64Array(which.length);
    movedBy(moves, shift, (k, weight) => {
      for (let h = 0; h < total.length; h++) {
        if (!harms(h)) continue;
        total[h]! += weight[h]!;
        afterHold[k]! += weight[h]!;
      }
    });
    return { which, weight: total };
  }
}

/** The value whose next reading tells the stories apart best: the greatest divergence of what they expect. */
function telling(belief: Belief, still: Bands, stories: readonly Story[]): Steps | null {
  const one = notSlight(still);
  const others = stories.map(({ shift, bands }) => ({ shift, bands: notSlight(bands) }));
  let best: { value: Steps; told: number } | null = null;
  for (const value of belief.model.values) {
    const expected = outcomeChances(belief, [{ shift: 0, bands: one }], value);
    const harmed = outcomeChances(belief, others, value);
    const told = expected.reduce((total, p, outcome) => total + (p > 0 ? p * Math.log(p / (harmed[outcome] ?? p)) : 0), 0);
    if (!best || told > best.told) best = { value, told };
  }
  return best?.value ?? null;
}

/** The chance of each outcome of a hold at a value, over all the bands of some stories. */
function outcomeChances(belief: Belief, stories: readonly Story[], value: Steps): number[] {
  const { model } = belief;
  const light = averageLight(belief);
  const whole = sum(Float64Array.from(stories, ({ bands }) => sum(bands.weight)));
  return Array.from({ length: model.outcomes }, (_, outcome) => {
    let chance = 0;
    for (const { shift, bands } of stories) {
      light(stimulusOf(model, value) - shift, [outcome], bands.which).forEach((each, k) => (chance += each * bands.weight[k]!));
    }
    return chance / whole;
  });
}

function notSlight({ which, weight }: Bands): Bands {
  const floor = Math.max(...weight) * SLIGHT;
  const places = [...weight.keys()].filter((place) => weight[place]! > floor);
  return { which: Int32Array.from(places, (p) => which[p]!), weight: Float64Array.from(places, (p) => weight[p]!) };
}
