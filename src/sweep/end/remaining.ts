// About how many holds a sweep will take: those made, and a guess at those to come. The centre's spread and the doubt that is
// left fall by about the same share with every hold, so their logarithms count holds; what is still to be seen of the ends comes
// on top. The weights were fitted to 1800 simulated sweeps, half of them with a sharp light and half with a soft one, half with
// arrows; `npm run bench -- --only remaining` counts on others how often the guess was true within two holds. At thorough care
// the ends settle by luck: no guess from the belief was true more often than in seven of ten.
import { centreOf, type Belief } from '../belief/belief.ts';
import type { Care } from '../care.ts';
import { SURE, type Readiness } from './care.ts';
import { surestValue } from './confidence.ts';
import { isSeen, type End } from './ends.ts';

interface Weights {
  readonly always: number;
  /** Holds for each factor of e of the centre's standard deviation above the one at which it is mostly sure. */
  readonly spread: number;
  /** Holds for each factor of e of the doubt that is too much. */
  readonly doubt: number;
  /** Holds for each of the two marginal values of an end that has not been held. */
  readonly part: number;
  /** Holds for each end that is not settled. */
  readonly unsettled: number;
}

const WEIGHTS: Record<Care, Weights> = {
  quick: { always: 0.45, spread: 0.5, doubt: 2, part: 0, unsettled: 0 },
  standard: { always: 1.6, spread: 0.7, doubt: 1.15, part: 0.45, unsettled: 0 },
  thorough: { always: 0.9, spread: 1.2, doubt: 0.75, part: 0.5, unsettled: 1.55 },
};

/** The centre's standard deviation, in steps, at which it is mostly sure. */
const NARROW = 0.45;

/** Holds still to come before the finish is offered: none when it may be, otherwise at least one. */
export function holdsToCome(belief: Belief, readiness: Readiness, care: Care): number {
  if (readiness.ready) return 0;
  const { always, spread, doubt, part, unsettled } = WEIGHTS[care];
  const wide = excess(centreOf(belief).sd / belief.model.scale.step, NARROW);
  const doubted = excess(1 - surestValue(belief).within, 1 - SURE);
  const ends = readiness.ends ? [readiness.ends.low, readiness.ends.high] : [null, null];
  const missing = ends.reduce((all, end) => all + missingParts(end), 0);
  const open = ends.filter((end) => end?.known !== 'settled' && end?.known !== 'past').length;
  return Math.max(1, Math.round(always + spread * wide + doubt * doubted + part * missing + unsettled * open));
}

function missingParts(end: End | null): number {
  if (end === null) return 2;
  if (isSeen(end) || end.known !== 'open') return 0;
  return Math.max(0.5, Number(!end.heldIn) + Number(!end.heldOut));
}

/** How many factors of e a value lies above what is enough; zero below it. */
const excess = (value: number, enough: number): number => Math.max(0, Math.log(value / enough));
