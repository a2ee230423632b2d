// Did the focus move during the sweep? Two stories are weighed against each other: one band made all the holds, or one
// band made those before some moment and another those after it. The Bayes factor is their odds (Kass & Raftery 1995,
// J. Am. Stat. Assoc. 90:773: above 10 is strong), averaged over the moment, which nobody knows.
import type { Belief } from '../belief/belief.ts';
import { stimulusOf } from '../belief/belief.ts';
import { observe, thinned, type Posterior } from '../belief/grid.ts';
import { outcomesOf } from '../belief/observation.ts';
import type { Hold } from '../hold.ts';

/** Evidence that the focus moved, and after which hold it most likely did. */
export interface Drift {
  readonly bayesFactor: number;
  readonly afterHold: number;
}

/** Odds at which the sweep stops and asks for a look in live view. */
export const STRONG = 10;
/** Neither story can be told from fewer holds than this on each side. */
const FEWEST = 2;
/** Bands enough to weigh two stories against each other. */
const STAND_IN = 2500;

/** Weighs the stories; moments at or before hold `trusted` are out of the question. Null when too little was held. */
export function driftOf(belief: Belief, holds: readonly Pick<Hold, 'value' | 'reading'>[], trusted: number): Drift | null {
  const first = Math.max(FEWEST, trusted + 1);
  const last = holds.length - FEWEST;
  if (last < first) return null;
  const opening = thinned(belief.opening, STAND_IN);
  const before = runningEvidence(belief, opening, holds);
  const whole = before.at(-1) ?? 0;
  let best = -Infinity;
  let afterHold = first;
  let sum = 0;
  for (let k = first; k <= last; k++) {
    const after = runningEvidence(belief, opening, holds.slice(k)).at(-1) ?? 0;
    const odds = (before[k - 1] ?? 0) + after - whole;
    sum += Math.exp(odds);
    if (odds > best) {
      best = odds;
      afterHold = k;
    }
  }
  return { bayesFactor: sum / (last - first + 1), afterHold };
}

/** Natural logarithm of the probability of the first 1, 2, 3 … holds. */
function runningEvidence(belief: Belief, opening: Posterior, holds: readonly Pick<Hold, 'value' | 'reading'>[]): number[] {
  let posterior = opening;
  let sum = 0;
  return holds.map(({ value, reading }) => {
    const { model } = belief;
    const step = observe(model, posterior, stimulusOf(model, value), outcomesOf(reading, model.arrows));
    posterior = step.posterior;
    sum += Math.log(step.predictive);
    return sum;
  });
}
