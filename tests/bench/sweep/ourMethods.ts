// Our own methods, through the same functions the panel uses: belief, readiness, suggestion, outcome. What is already
// worked out for the same beginning of a sweep is kept, since a thousand sweeps begin alike.
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import type { Random } from '../../../src/practice/random.ts';
import { expected, fewOf, openBelief, stimulusOf, type Belief } from '../../../src/sweep/belief/belief.ts';
import { entropy, lookAhead, varianceOf, type Prospect } from '../../../src/sweep/belief/criteria.ts';
import { observeLights } from '../../../src/sweep/belief/lights.ts';
import { IN, outcomesOf } from '../../../src/sweep/belief/observation.ts';
import { NO_MEMORY } from '../../../src/sweep/memory.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import type { Care } from '../../../src/sweep/care.ts';
import { outcomeOf } from '../../../src/sweep/end/outcome.ts';
import type { Hold } from '../../../src/sweep/hold.ts';
import { closingOf } from '../../../src/sweep/next/closing.ts';
import { worthOfHolds, type Candidate } from '../../../src/sweep/next/lookAhead.ts';
import { secondsOfHold } from '../../../src/sweep/next/seconds.ts';
import { suggest } from '../../../src/sweep/next/suggestion.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { read } from '../../../src/sweep/verdict.ts';
import { moment, seconds, steps, type Steps } from '../../../src/units.ts';
import { coarsened, INOUT, SIDES_ONLY, type Merging } from './coarsened.ts';
import { Stopwatch, type SweepResult } from './result.ts';

export interface OurMethod {
  readonly care: Care;
  /** Does the body show arrows, and are the grades of a failing light told? */
  readonly arrows: boolean;
  readonly grades: boolean;
  /** How values are rated: our way, or by one of two criteria from the literature. */
  readonly criterion: 'ours' | 'variance' | 'entropy';
}

const HOLD_TIME = seconds(5);
/** Nobody would go on for longer than this. */
const PATIENCE = 40;
const KEPT_DEPTH = 7;
/** Bands the rival criteria look ahead with: as many as ours. */
const STAND_IN = 700;

interface Thought {
  readonly belief: Belief;
  readonly holds: readonly Hold[];
  readonly ready: boolean;
  readonly value: Steps;
}

/** A method ready to run sweeps. */
export function ourMethod(method: OurMethod): (camera: PracticeCamera, random: Random) => SweepResult {
  const merging: Merging | null = method.grades ? null : method.arrows ? SIDES_ONLY : INOUT;
  const opened = openBelief(USUAL_SCALE, method.arrows, NO_MEMORY);
  const opening: Belief = merging ? { ...opened, model: coarsened(opened.model, merging) } : opened;
  const kept = new Map<string, Thought>();
  const start = think(opening, []);

  return (camera, random) => {
    const watch = new Stopwatch();
    let key = '';
    let thought = start;
    while (!thought.ready && thought.holds.length < PATIENCE) {
      const { value } = thought;
      const verdict = halfPress(camera, value, random);
      watch.count(value, verdict);
      key += `${value}${verdict.light}${verdict.arrows};`;
      const known = kept.get(key);
      thought = known ?? after(thought, verdict);
      if (!known && thought.holds.length < KEPT_DEPTH) kept.set(key, thought);
    }
    return conclude(thought, camera, watch);
  };

  function after({ belief, holds, value }: Thought, verdict: Hold['verdict']): Thought {
    const reading = read(verdict, method.arrows ? 'right-is-up' : 'absent');
    const seen = outcomesOf(reading, method.arrows);
    const merged = merging ? merging.flatMap((group, index) => (seen.some((o) => group.includes(o)) ? [index] : [])) : seen;
    const { posterior, predictive } = observeLights(belief.model, belief.posterior, null, { stimulus: stimulusOf(belief.model, value), seen: merged }, 1e-8);
    const hold: Hold = { value, verdict, reading, began: moment(0), ended: moment(0), by: 'key', heard: null, predictive };
    return think({ ...belief, posterior }, [...holds, hold]);
  }

  function think(belief: Belief, holds: readonly Hold[]): Thought {
    const enough = readiness(
      belief,
      holds.map(({ value, reading }) => ({ value, counts: reading.counts })),
      method.care,
    );
    const { care } = method;
    const { test } = closingOf({ belief, holds, readiness: enough, care, skipped: [], trustedUpTo: 0 });
    if (test) return { belief, holds, ready: false, value: test.value };
    const { value } = suggest(
      {
        belief,
        holds,
        readiness: enough,
        care,
        order: 'fewest',
        dialled: holds.at(-1)?.value ?? steps(0),
        holdTime: HOLD_TIME,
        skipped: [],
      },
      RATINGS[method.criterion],
    );
    return { belief, holds, ready: enough.ready, value };
  }
}

/** Information about the whole band, time not weighed (Watson 2017, eq. 13). */
function informationOfHolds(belief: Belief): Candidate[] {
  const few = fewOf(belief, STAND_IN);
  return rated(belief.model, lookAhead(...expected(belief.model, few), entropy), entropy(few.mass, 1), () => 1);
}

/** The fall of the centre's variance for the person's seconds. */
function varianceOfHolds(belief: Belief, dialled: Steps): Candidate[] {
  const { model } = belief;
  const few = fewOf(belief, STAND_IN);
  const variance = varianceOf(Float64Array.from(few.which, (h) => model.centre[h] ?? 0));
  const cost = (value: Steps, chanceOfIn: number): number => secondsOfHold(dialled, value, model.scale.step, chanceOfIn, HOLD_TIME);
  return rated(model, lookAhead(...expected(model, few), variance), variance(few.mass, 1), cost);
}

function rated(model: Belief['model'], prospects: readonly Prospect[], now: number, cost: (value: Steps, chanceOfIn: number) => number): Candidate[] {
  return prospects.map(({ stimulus, chances, expected }) => {
    const value = model.values[stimulus] ?? steps(0);
    const chanceOfIn = chances[IN] ?? 0;
    return { value, chanceOfIn, worth: (now - expected) / cost(value, chanceOfIn) };
  });
}

const RATINGS = { ours: worthOfHolds, variance: varianceOfHolds, entropy: informationOfHolds };

function conclude({ belief, holds, ready }: Thought, camera: PracticeCamera, watch: Stopwatch): SweepResult {
  const outcome = outcomeOf(
    belief,
    holds.map(({ value, reading }) => ({ value, counts: reading.counts })),
    { holds: holds.length, seconds: seconds(0) },
  );
  const cost = { holds: watch.holds, seconds: watch.seconds, truth: (camera.low + camera.high) / 2 };
  if (!ready) return { ...cost, centre: 0, chosen: 0, stated: 0, ended: 'gave up' };
  if (outcome.found === 'band') {
    return { ...cost, centre: outcome.centre, chosen: outcome.chosen, stated: outcome.within, ended: 'band' };
  }
  return { ...cost, centre: 0, chosen: 0, stated: 0, ended: outcome.found === 'past the limit' ? 'past the limit' : 'nothing' };
}
