// The numbers of a width transfer, as they were: what the first series says on bands that reach far, what the second opens with, and
// what is carried over, for series on either side, with arrows and without, that saw their visible end and that did not.
import { describe, expect, test } from 'vitest';
import { centreOf, chancesOfIn, weigh } from '../../../src/sweep/belief/belief.ts';
import { heldValues } from '../../../src/sweep/end/ends.ts';
import { carriedOver } from '../../../src/sweep/transfer/carried.ts';
import { asideOpening, carriedBelief, firstBelief, type TransferPlan } from '../../../src/sweep/transfer/joint.ts';
import { read, type ArrowDisplay } from '../../../src/sweep/verdict.ts';
import { seconds, steps } from '../../../src/units.ts';
import type { Scale } from '../../../src/sweep/scale.ts';
import { COARSE, drawn, SHORT } from '../drawn.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { believingOn, held } from '../end/laid.ts';
import { opened } from '../staged.ts';
import { summed } from '../../kept/summed.ts';

interface Case {
  readonly scale: Scale;
  readonly arrows: ArrowDisplay;
  readonly side: 'low' | 'high';
  readonly visible: number | null;
  readonly first: readonly [band: readonly [number, number], values: readonly number[]];
  readonly second: readonly [band: readonly [number, number], values: readonly number[]];
  readonly median?: number;
}

const high: Case = {
  scale: SHORT,
  arrows: 'absent',
  side: 'high',
  visible: 3,
  first: [[2.6, 7.4], [0, 5, 3, 2, 4]],
  second: [[-2.4, 2.4], [0, 4, -3, 2, 3, -2]],
}; // prettier-ignore
const CASES: Readonly<Record<string, Case>> = {
  'past the upper limit': high,
  'past the lower limit, with arrows': { ...high, arrows: 'right-is-up', side: 'low', visible: -3, first: [[-7.4, -2.6], [0, -5, -3, -2]], second: [[-1.4, 3.4], [0, 4, 3, -1, -2]] },
  'whose visible end was not seen': { ...high, first: [[2.6, 7.4], [0, 5, 3, 1]], second: [[-2.4, 2.4], [0, 4, -3, 3]] },
  'whose light never came on': { ...high, visible: null, first: [[8.6, 11.4], [0, 5, 3]], second: [[-0.6, 2.2], [0, 2, 3, -1, 1]] },
  'in strides of two': { ...high, scale: COARSE, side: 'low', visible: 0, median: 2, first: [[-11, 1], [0, 2, -6, 4]], second: [[-1, 9], [4, 10, 8, -2, 0]] },
  'whose second series runs past as well': { ...high, second: [[-9, -1], [0, -5, -5, -1, -2]] },
  'whose second series never lit': { ...high, second: [[9, 12], [0, 4]] },
  'far past the limit': { ...high, visible: 5, first: [[4.6, 13], [0, 5, 4, 5]], second: [[-4.4, 4.2], [0, 4, 5, -4, -5]] },
}; // prettier-ignore

function planOf({ scale, arrows, side, visible, first, median }: Case): TransferPlan {
  const { holds } = drawn(90, { scale, arrows, wrong: 0, bandAt: () => first[0], values: first[1] });
  const memory = { centres: [], halfWidth: median === undefined ? null : { median, logSd: 0.4 } };
  const transfer = { of: 'a', side, visible: visible === null ? null : steps(visible), holds: holds.map(({ value, verdict }) => ({ value, verdict })) };
  return { ...opened({ scale, arrows }).plan, memory, transfer };
}

describe.each(Object.keys(CASES))('a transfer %s', (name) => {
  const one = CASES[name] ?? high;
  const plan = planOf(one);
  const first = firstBelief(plan);
  const opening = asideOpening(plan);
  const { holds, beliefs } = drawn(91, { scale: one.scale, arrows: one.arrows, wrong: 0, bandAt: () => one.second[0], values: one.second[1], opening });

  test('opens its second series with the shapes that the first left', () => {
    const before = [first.posterior.which.length, summed(first.posterior.mass), summed(first.posterior.edges), summed(first.posterior.lamp)];
    const bond = [...(opening.bond ?? [])].map(([width, kinds]) => [width, summed(kinds)]);
    const after = [
      opening.posterior.which.length,
      summed(opening.posterior.mass),
      summed(bond.map(([, kinds]) => kinds ?? 0)),
      ...Object.values(centreOf(opening)),
    ];
    expect([before, after, chancesOfIn(opening)].map(oneLine)).toMatchSnapshot();
    expect(firstBelief(plan)).toBe(first);
  });

  test('carries over what both say', () => {
    const rows = beliefs.flatMap((aside, at) => {
      const outcome = carriedOver(plan, aside, heldValues(holds.slice(0, at + 1)), { holds: at, seconds: seconds(at) });
      const { tally: _, ...found } = outcome;
      return at === beliefs.length - 1 || at % 2 === 0 ? [oneLine(Object.values(found))] : [];
    });
    const last = beliefs.at(-1) ?? opening;
    const both = [carriedBelief(plan, last), carriedBelief(plan, last, true)];
    const joint = both.map((belief) => oneLine([belief.posterior.which.length, summed(belief.posterior.mass), Object.values(centreOf(belief))]));
    expect([rows, joint]).toMatchSnapshot();
  });
});

test('a plan that was told more of is worked out anew where its bands, its arrows or its memory are others', () => {
  const plan = planOf({
    ...high,
    scale: { min: steps(-3), max: steps(3), step: 1 },
    first: [
      [1.6, 7.4],
      [0, 2],
    ],
  });
  const first = firstBelief(plan);
  expect(firstBelief({ ...plan, start: steps(3) })).toBe(first);
  expect(firstBelief({ ...plan, arrows: 'right-is-up' })).not.toBe(first);
  const turned = firstBelief({ ...plan, arrows: 'right-is-down' });
  expect(firstBelief({ ...plan, arrows: 'right-is-up' })).not.toBe(turned);
  const again = firstBelief(plan);
  expect(firstBelief({ ...plan, memory: { ...plan.memory } })).not.toBe(again);
  expect(firstBelief({ ...plan, lapse: 0.05 }).model).not.toBe(first.model);
});

test('a second band that runs past a limit as well leaves what was known before', () => {
  const plan = planOf(high);
  const { model } = asideOpening(plan);
  const rows = [believingOn(model, [-6, -0.5, 1]), believingOn(model, [0.5, 6, 1]), believingOn(model, [-2.5, 2.5, 1])].map((aside) =>
    oneLine(carriedOver(plan, aside, held([-5, 'in'], [5, 'in'], [2, 'in'], [3, 'out'], [-2, 'in'], [-3, 'out']), { holds: 0, seconds: seconds(0) })),
  );
  expect(rows).toMatchSnapshot();
});

test('a hold that hardly fits is read as the body is set', () => {
  const plan = planOf({ ...high, arrows: 'right-is-down' });
  const opening = asideOpening(plan);
  const verdict = { light: 'dark', arrows: 'left' } as const;
  expect(oneLine(weigh(opening, steps(2), read(verdict, plan.arrows)).predictive)).toMatchSnapshot();
});
