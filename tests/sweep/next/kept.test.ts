// What the search says next, as it was: what a hold at each value gains, which parts of the ends are missing and what they cost, the
// walk outwards, the reasons, and the last holds before the finish, for states that a seed draws.
import { expect, test } from 'vitest';
import { readiness, type Readiness } from '../../../src/sweep/end/care.ts';
import { heldValues, type End } from '../../../src/sweep/end/ends.ts';
import type { Hold } from '../../../src/sweep/hold.ts';
import { worthOfHolds } from '../../../src/sweep/next/lookAhead.ts';
import { cheapestOf, missingParts } from '../../../src/sweep/next/marginal.ts';
import { outwardFrom } from '../../../src/sweep/next/outward.ts';
import { reasonFor, reasonToStart } from '../../../src/sweep/next/reason.ts';
import type { SearchState } from '../../../src/sweep/next/searchState.ts';
import { secondsOfHold } from '../../../src/sweep/next/seconds.ts';
import { suggest } from '../../../src/sweep/next/suggestion.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { seconds, steps } from '../../../src/units.ts';
import { COARSE, drawn } from '../drawn.ts';
import { oneLine } from '../../kept/oneLine.ts';

const CARES = ['quick', 'standard', 'thorough'] as const;
const series = [
  drawn(5, { count: 2 }),
  drawn(6),
  drawn(7, { scale: COARSE, arrows: 'right-is-up', count: 6 }),
  drawn(8, { bandAt: () => [-2.5, 2.5], count: 16, wrong: 0 }),
];

test('what a hold at each value gains', () => {
  const rows = series.flatMap(({ belief }) =>
    [-2, 4].map((dialled) => oneLine(worthOfHolds(belief, steps(dialled), seconds(5)).map((each) => Object.values(each)))),
  );
  expect(rows).toMatchSnapshot('worth');
  expect([0, 1, 3.5].map((held) => secondsOfHold(steps(-2), steps(4), 2, held, seconds(7)))).toMatchSnapshot('seconds');
});

const open = (last: number, next: number | null, heldIn: boolean, heldOut: boolean): End =>
  ({ known: 'open', last: steps(last), next: next === null ? null : steps(next), heldIn, heldOut }) as const;
const flags = [[false, false], [true, false], [false, true], [true, true]] as const; // prettier-ignore
const endsOn = (sign: 1 | -1): End[] => [
  ...flags.map(([heldIn, heldOut]) => open(sign * 2, sign * 3, heldIn, heldOut)),
  ...flags.slice(0, 2).map(([heldIn, heldOut]) => open(sign * 5, null, heldIn, heldOut)),
  ...flags.slice(0, 3).map(([heldIn, heldOut]): End => ({ known: 'as before', last: steps(sign * 2), next: steps(sign * 3), heldIn, heldOut })),
  { known: 'seen', last: steps(sign * 2), next: steps(sign * 3) },
  { known: 'seen', last: steps(sign), next: steps(sign * 2) },
  { known: 'settled', last: steps(sign * 2), next: steps(sign * 3) },
  { known: 'past', last: steps(sign * 5) },
];

function stateOf(at: number, told: Partial<SearchState>): SearchState {
  const { belief, holds } = series[at] ?? drawn(0);
  const held = heldValues(holds);
  return {
    belief,
    holds,
    readiness: readiness(belief, held, 'standard'),
    care: 'standard',
    order: 'fewest',
    dialled: steps(1),
    holdTime: seconds(5),
    skipped: [],
    ...told,
  };
}

test('the missing parts of the ends, and what is suggested for them', () => {
  const worth = [1, 1.5, 0.4, 3, 2, -1, 3, 2.5, 0, 1, 2];
  const rating = (): ReturnType<typeof worthOfHolds> => worth.map((each, at) => ({ value: steps(at - 5), worth: each / 9, chanceOfIn: 0.5 }));
  const lows = endsOn(-1);
  const highs = endsOn(1);
  const pairs = lows.flatMap((low, at) => [
    { low, high: highs[(at * 5 + 3) % highs.length] ?? low },
    { low, high: highs[at] ?? low },
  ]);
  const rows = pairs.map((ends) =>
    CARES.map((care) => {
      const told = [{ ready: false, wanted: 'ends', ends }, { ready: false, wanted: 'centre', ends }, { ready: true, as: 'band', ends }] as const; // prettier-ignore
      const states = told.map((now: Readiness) => stateOf(3, { readiness: now, care, dialled: steps(-1) }));
      const skipping = { ...(states[0] ?? stateOf(3, {})), skipped: [steps(3), steps(-2)] };
      const parts = missingParts(skipping).map((part) => Object.values(part));
      const [cheap, cheaper] = [cheapestOf(skipping), cheapestOf({ ...skipping, skipped: [] })];
      return oneLine([parts, cheap?.value, cheaper?.value, [...states, skipping].map((state) => suggest(state, rating).value)]);
    }),
  );
  expect(rows).toMatchSnapshot();
});

test('what is suggested in other states', () => {
  const nothing: Readiness = { ready: false, wanted: 'ends', ends: null };
  const rows = series.flatMap((_, at) =>
    [
      {},
      { order: 'outward' as const },
      { readiness: nothing },
      { readiness: { ready: true, as: 'nothing held' } as const },
      { skipped: [steps(2), steps(0), steps(4)] },
      { skipped: [-6, -5, -4, -3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 8, 10, 12].map(steps) },
      { care: 'quick' as const, dialled: steps(4) },
      { holds: [] },
    ].map((told) => {
      const { value, reason } = suggest(stateOf(at, told));
      return oneLine([value, Object.values(reason)]);
    }),
  );
  expect(rows).toMatchSnapshot();
});

/** Some values, in or out, on a scale from -4 to 4. */
function anyHolds(seed: number): Hold[] {
  const random = seededRandom(seed);
  return Array.from({ length: Math.floor(7 * random()) }, () => {
    const counts = random() < 0.6 ? 'in' : 'out';
    const value = steps(Math.floor(9 * random()) - 4);
    return {
      value,
      verdict: { light: counts === 'in' ? 'steady' : 'dark', arrows: 'none' },
      reading: { counts },
      predictive: random() / 10,
    } as unknown as Hold;
  });
}

test('the walk outwards and the reasons', () => {
  const scale = { min: steps(-4), max: steps(4), step: 1 };
  const rows = Array.from({ length: 40 }, (_, seed) => {
    const holds = anyHolds(seed + 1);
    const reason = reasonFor(steps((seed % 9) - 4), { holds });
    return oneLine([outwardFrom(scale, holds), Object.values(reason)]);
  });
  expect(rows).toMatchSnapshot('walk and reason');
  const centres = [0, 2, 2.9, 3, 5].map((centre, at) => ({
    centre,
    sd: 1,
    weight: [0.3, 0.5, 0.5, 0.9, 0.2][at] ?? 0,
    from: { at: 0 as never, of: 'pairing' as const },
  }));
  expect(
    [-3, -1, 0, 1, 2, 6].flatMap((value) => [1, 2].map((step) => reasonToStart(steps(value), step, { centres, halfWidth: null }).because)),
  ).toMatchSnapshot('start');
});
