// Series of holds that a seed draws, for the tests that keep numbers: a band somewhere on the scale or past it, a light that errs now
// and then, values wherever they fall, and the chance that the belief gave to each reading.
import { openBelief, weigh, type Belief } from '../../src/sweep/belief/belief.ts';
import { seededRandom } from '../../src/practice/random.ts';
import type { Hold } from '../../src/sweep/hold.ts';
import { NO_MEMORY, type Memory } from '../../src/sweep/memory.ts';
import { valuesOf, type Scale } from '../../src/sweep/scale.ts';
import { read, type ArrowDisplay, type Verdict } from '../../src/sweep/verdict.ts';
import { moment, steps } from '../../src/units.ts';

export const SHORT: Scale = { min: steps(-5), max: steps(5), step: 1 };
/** Zero is not in its middle, and its stride is not one. */
export const COARSE: Scale = { min: steps(-6), max: steps(12), step: 2 };

export interface Drawn {
  /** Before the first hold. */
  readonly opening: Belief;
  readonly belief: Belief;
  readonly holds: readonly Hold[];
  /** After each of them. */
  readonly beliefs: readonly Belief[];
}

export interface Terms {
  readonly scale?: Scale;
  readonly arrows?: ArrowDisplay;
  readonly count?: number;
  readonly memory?: Memory;
  /** The share of verdicts that are wrong. */
  readonly wrong?: number;
  /** Low and high edge at a hold; without it the seed draws a band that stays. */
  readonly bandAt?: (hold: number) => readonly [number, number];
  readonly opening?: Belief;
  /** The values to hold; without them the seed draws them. */
  readonly values?: readonly number[];
}

export function drawn(seed: number, terms: Terms = {}): Drawn {
  const { scale = SHORT, arrows = 'absent', count = 10, memory = NO_MEMORY, wrong = 0.06 } = terms;
  const random = seededRandom(seed);
  const all = valuesOf(scale);
  const middle = scale.min + (scale.max - scale.min) * (1.2 * random() - 0.1);
  const half = scale.step * (0.4 + 4 * random());
  const bandAt = terms.bandAt ?? (() => [middle - half, middle + half] as const);
  const opening = terms.opening ?? openBelief(scale, arrows !== 'absent', memory);
  let belief = opening;
  const beliefs: Belief[] = [];
  const holds = Array.from({ length: terms.values?.length ?? count }, (_, at): Hold => {
    const drawnValue = all[Math.floor(random() * all.length)] ?? scale.min;
    const value = steps(terms.values?.[at] ?? drawnValue);
    const [low, high] = bandAt(at);
    const verdict = verdictAt(value, low, high, scale.step, random() < wrong, random(), arrows);
    const reading = read(verdict, arrows);
    const after = weigh(belief, value, reading);
    belief = after.belief;
    beliefs.push(belief);
    const began = moment(1_000_000 + at * 17_000 + Math.floor(random() * 5000));
    return { value, verdict, reading, began, ended: moment(began + 6000), by: 'key', heard: null, predictive: after.predictive };
  });
  return { opening, belief, holds, beliefs };
}

/** One step outside the light is late, up to five it flickers; one failure in eight is told without how, and one arrow in eight not at all. */
function verdictAt(value: number, low: number, high: number, step: number, isWrong: boolean, chance: number, display: ArrowDisplay): Verdict {
  const outside = Math.max(low - value, value - high) / step;
  const isIn = outside <= 0 !== isWrong;
  if (isIn) return { light: 'steady', arrows: display !== 'absent' && chance < 0.5 ? 'balanced' : 'none' };
  const light = chance < 0.125 ? 'untold' : outside <= 1 ? 'late' : outside <= 5 ? 'flicker' : 'dark';
  if (display === 'absent' || (chance > 0.3 && chance < 0.43)) return { light, arrows: 'none' };
  const above = value < (low + high) / 2;
  return { light, arrows: above === (display === 'right-is-up') ? 'right' : 'left' };
}
