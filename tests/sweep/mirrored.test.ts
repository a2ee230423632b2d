// Contract of the whole judgement: it knows no side and no size of step. What was held on one side of the scale, held on the other, tells the same
// of the other side; and values twice as far apart, on a scale of twice the step, tell the same in steps.
import { describe, expect, test } from 'vitest';
import { centreInterval, centreOf, chancesOfIn, likeliestIn, openBelief, weigh, type Belief } from '../../src/sweep/belief/belief.ts';
import type { Care } from '../../src/sweep/care.ts';
import { readiness } from '../../src/sweep/end/care.ts';
import { surestValue } from '../../src/sweep/end/confidence.ts';
import { driftOf } from '../../src/sweep/end/drift.ts';
import { endsOf, heldValues, type End } from '../../src/sweep/end/ends.ts';
import { outcomeOf } from '../../src/sweep/end/outcome.ts';
import { holdsToCome } from '../../src/sweep/end/remaining.ts';
import { stillnessOf } from '../../src/sweep/end/stillness.ts';
import { storiesOf } from '../../src/sweep/end/story.ts';
import type { Hold } from '../../src/sweep/hold.ts';
import { NO_MEMORY, type Memory } from '../../src/sweep/memory.ts';
import { worthOfHolds } from '../../src/sweep/next/lookAhead.ts';
import { missingParts } from '../../src/sweep/next/marginal.ts';
import { arrowsAgainst } from '../../src/sweep/trouble/arrows.ts';
import { holeIn } from '../../src/sweep/trouble/hole.ts';
import { read, type Arrows, type Light } from '../../src/sweep/verdict.ts';
import { moment, seconds, steps } from '../../src/units.ts';

type Seen = readonly [value: number, light: Light, arrows?: Arrows];
interface Turned {
  readonly sign: 1 | -1;
  readonly step: number;
}
const AS_IS: Turned = { sign: 1, step: 1 };
const OTHER: Record<Arrows, Arrows> = { left: 'right', right: 'left', none: 'none', balanced: 'balanced', lopsided: 'lopsided' };
const MEMORY: Memory = { ...NO_MEMORY, centres: [{ centre: 2, sd: 1.5, weight: 1 }], halfWidth: { median: 2.5, logSd: 0.3 } };

function held(seen: readonly Seen[], arrows: boolean, { sign, step }: Turned, remembered: boolean) {
  const scale = { min: steps(-8 * step), max: steps(8 * step), step };
  const memory = remembered ? { ...MEMORY, centres: MEMORY.centres.map((one) => ({ ...one, centre: sign * step * one.centre })) } : NO_MEMORY;
  let belief: Belief = openBelief(scale, arrows, memory);
  const holds = seen.map(([value, light, side = 'none'], at): Hold => {
    const verdict = { light, arrows: sign < 0 ? OTHER[side] : side };
    const reading = read(verdict, arrows ? 'right-is-up' : 'absent');
    const weighed = weigh(belief, steps(sign * step * value), reading);
    belief = weighed.belief;
    return {
      value: steps(sign * step * value),
      verdict,
      reading,
      predictive: weighed.predictive,
      began: moment(60_000 * at),
      at: moment(60_000 * at),
    } as unknown as Hold;
  });
  return { belief, holds };
}

/** All that is judged of the holds, told in steps and as if nothing had been turned. */
function judged(seen: readonly Seen[], arrows: boolean, turned: Turned, remembered: boolean, care: Care) {
  const { sign, step } = turned;
  const { belief, holds } = held(seen, arrows, turned, remembered);
  const back = (value: number | null | undefined): number | null => (value === null || value === undefined ? null : (sign * value) / step + 0);
  const span = (from: number, to: number) => (sign > 0 ? [back(from), back(to)] : [back(to), back(from)]);
  const list = <Item>(items: readonly Item[]): readonly Item[] => (sign > 0 ? items : items.toReversed());
  const end = (one: End | undefined) => one && { ...one, last: back(one.last), next: 'next' in one ? back(one.next) : null };
  const ends = endsOf(belief, heldValues(holds));
  const enough = readiness(belief, heldValues(holds), care);
  const centre = centreOf(belief);
  const interval = centreInterval(belief);
  const drift = driftOf(belief, holds, 0);
  const still = stillnessOf(belief, holds, 0, sign * step * 1.5);
  const hole = holeIn(belief, holds);
  const outcome = outcomeOf(belief, heldValues(holds), { holds: holds.length, seconds: seconds(60) } as never);
  const state = { belief, holds, readiness: enough, care, order: 'fewest', dialled: steps(0), holdTime: seconds(5), skipped: [] } as const;
  return {
    predictive: holds.map(({ predictive }) => predictive),
    centre: [back(centre.mean), centre.sd / step],
    interval: span(interval.from, interval.to),
    chances: list(chancesOfIn(belief)),
    likeliest: [back(likeliestIn(belief).value), likeliestIn(belief).chance],
    surest: [back(surestValue(belief).value), surestValue(belief).within],
    ends: ends && [end(sign > 0 ? ends.low : ends.high), end(sign > 0 ? ends.high : ends.low)],
    ready: [enough.ready, 'wanted' in enough ? enough.wanted : enough.as, 'side' in enough ? (enough.side === 'above') === sign > 0 : null],
    toCome: holdsToCome(belief, enough, care),
    drift: drift && [drift.bayesFactor, drift.afterHold],
    still: [still.odds, still.afterHold, back(still.test)],
    // Of the slow drift and of play more is left out: to a tenth of the logarithm.
    stories: storiesOf(belief, holds).map(({ bayesFactor }) => Math.round(10 * Math.log(bayesFactor)) + 0),
    hole: hole && [hole.bayesFactor, ...span(hole.from, hole.to)],
    arrows: arrowsAgainst(belief, holds)?.bayesFactor ?? null,
    outcome: [
      outcome.found,
      'chosen' in outcome ? back(outcome.chosen) : null,
      'low' in outcome ? span(outcome.low, outcome.high) : null,
      'within' in outcome ? outcome.within : null,
      'visible' in outcome ? back(outcome.visible) : null,
      'bound' in outcome ? back(outcome.bound) : null,
    ],
    // It looks at a draw of the bands, which is another on the other side.
    worth: sign > 0 ? worthOfHolds(belief, steps(0), seconds(5)).map(({ worth, chanceOfIn }) => [Math.round(1e9 * worth) / 1e9 + 0, chanceOfIn]) : null,
    missing: missingParts(state)
      .map(({ value, side, part, chance }) => [back(value), (side === 'low') === sign > 0 ? 'low' : 'high', part, chance])
      .toSorted((a, b) => Number(a[0]) - Number(b[0])),
  };
}

/** Numbers to six digits, as bands that hardly count are left out; everything else as it is. */
const about = (value: unknown): unknown => {
  if (typeof value === 'number') return Number.isFinite(value) ? Number(value.toPrecision(6)) : value;
  if (Array.isArray(value)) return value.map(about);
  return value !== null && typeof value === 'object' ? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, about(each)])) : value;
};

const SERIES: readonly (readonly [string, boolean, boolean, Care, readonly Seen[]])[] = [
  ['a band to one side', false, false, 'standard', [[0, 'late'], [3, 'steady'], [6, 'flicker'], [5, 'steady'], [1, 'steady'], [-1, 'dark']]],
  ['one that is remembered', false, true, 'standard', [[2, 'steady'], [5, 'late'], [0, 'late'], [4, 'steady']]],
  ['one that was seen whole', false, false, 'thorough', [[1, 'steady'], [4, 'dark'], [-2, 'flicker'], [3, 'late'], [2, 'steady'], [-1, 'steady'], [-2, 'late'], [3, 'flicker'], [2, 'steady'], [-1, 'steady']]],
  ['one past the limit', false, false, 'quick', [[0, 'dark'], [5, 'late'], [8, 'steady'], [7, 'steady'], [8, 'steady'], [6, 'steady'], [5, 'flicker']]],
  ['one that moved', false, false, 'standard', [[0, 'steady'], [-3, 'dark'], [3, 'dark'], [1, 'steady'], [-1, 'steady'], [0, 'dark'], [1, 'dark'], [4, 'steady'], [6, 'steady'], [2, 'flicker'], [5, 'steady']]],
  ['one with a hole', false, false, 'standard', [[-4, 'steady'], [4, 'steady'], [0, 'flicker'], [1, 'flicker'], [3, 'steady'], [0, 'flicker'], [-2, 'steady'], [7, 'dark']]],
  ['arrows that agree', true, false, 'standard', [[0, 'late', 'right'], [4, 'steady', 'balanced'], [7, 'flicker', 'left'], [2, 'steady', 'balanced'], [1, 'late', 'right']]],
  ['arrows that do not', true, true, 'standard', [[0, 'late', 'left'], [4, 'steady', 'balanced'], [7, 'flicker', 'right'], [2, 'steady', 'balanced'], [-2, 'dark', 'left'], [6, 'late', 'left']]],
  ['nothing at all', false, false, 'quick', [[0, 'dark'], [4, 'dark'], [-3, 'dark'], [7, 'dark'], [-6, 'dark'], [2, 'dark'], [-1, 'dark'], [5, 'dark'], [8, 'dark'], [-8, 'dark'], [6, 'dark'], [3, 'dark'], [-5, 'dark']]],
]; // prettier-ignore

describe.each(SERIES)('%s', (_, arrows, remembered, care, seen) => {
  const asIs = about(judged(seen, arrows, AS_IS, remembered, care));

  test('tells the same on the other side', () => {
    expect(about(judged(seen, arrows, { sign: -1, step: 1 }, remembered, care))).toEqual({ ...Object(asIs), worth: null });
  });

  test('tells the same in steps twice as large', () => {
    expect(about(judged(seen, arrows, { sign: 1, step: 2 }, remembered, care))).toEqual(asIs);
  });
});
