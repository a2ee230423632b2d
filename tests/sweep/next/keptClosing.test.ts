// What is still wanted before the finish is offered, as it was: a value to prove, one early value held again, or a question about the
// focus, for series that stay, that move, and of a lens that was swept before.
import { expect, test } from 'vitest';
import type { Readiness } from '../../../src/sweep/end/care.ts';
import type { End } from '../../../src/sweep/end/ends.ts';
import { closingOf } from '../../../src/sweep/next/closing.ts';
import { steps } from '../../../src/units.ts';
import { drawn, type Drawn } from '../drawn.ts';
import { oneLine } from '../../kept/oneLine.ts';

const seen = (last: number, next: number): End => ({ known: 'seen', last: steps(last), next: steps(next) });
const ENDS = { low: seen(-2, -3), high: seen(3, 4) };
const READY: Readiness = { ready: true, as: 'band', ends: ENDS };
const VALUES = [5, -4, 2, 4, 3, -2, -3, 1, 5];
const DRIFTING = [0, 5, -5, 3, -3, 4, -2, 1, 5, -4, 5, -1];
const SERIES: Readonly<Record<string, Drawn>> = {
  drifts: drawn(60, { arrows: 'right-is-up', bandAt: (hold) => [-4 + 0.4 * hold, 1 + 0.4 * hold], values: DRIFTING, wrong: 0 }),
  stays: drawn(31, { bandAt: () => [-2.5, 3.5], values: VALUES, wrong: 0 }),
  moves: drawn(32, { bandAt: (hold) => (hold < 4 ? [-5, 0] : [-2.5, 3.5]), values: [-1, 2, -4, 1, 3, -4, -3, 4, 2], wrong: 0 }),
  'moves early': drawn(33, { bandAt: (hold) => (hold < 3 ? [1, 6] : [-2.5, 3.5]), values: [-1, 5, 3, -2, 0, 5, -3, 3, 4, 1], wrong: 0 }),
};

test.each(Object.keys(SERIES))('a series that %s', (name) => {
  const { belief, holds } = SERIES[name] ?? drawn(0);
  const asked = { belief, holds, readiness: READY, care: 'standard', skipped: [], trustedUpTo: 0 } as const;
  const proof = closingOf(asked);
  const skipping = closingOf({ ...asked, skipped: [steps(0), steps(1)] });
  const test = skipping.test ? [skipping.test.value] : [];
  const all = [
    proof,
    skipping,
    closingOf({ ...asked, skipped: [steps(0), steps(1), ...test] }),
    closingOf({ ...asked, skipped: test, care: 'thorough', holds: [...holds, ...holds.slice(2, 3)] }),
    closingOf({ ...asked, trustedUpTo: 4, skipped: [steps(0), steps(1)] }),
    closingOf({ ...asked, readiness: { ready: true, as: 'band', ends: { low: seen(-3, -4), high: seen(5, 6) } } }),
  ];
  expect(all.map(oneLine)).toMatchSnapshot();
});

test('nothing is wanted at quick care, before the finish, or without a band', () => {
  const { belief, holds } = SERIES['stays'] ?? drawn(0);
  const asked = { belief, holds, readiness: READY, care: 'standard', skipped: [], trustedUpTo: 0 } as const;
  const none = { hidden: null, test: null };
  expect(closingOf(asked)).not.toEqual(none);
  expect(closingOf({ ...asked, care: 'quick' })).toEqual(none);
  expect(closingOf({ ...asked, readiness: { ready: false, wanted: 'centre', ends: ENDS } })).toEqual(none);
  expect(closingOf({ ...asked, readiness: { ready: true, as: 'past the limit', ends: ENDS } })).toEqual(none);
  expect(closingOf({ ...asked, readiness: { ready: true, as: 'band', ends: null } })).toEqual(none);
});

test('a value is proven by a hold of it, or by the last sweep where it held and both ends are where they were', () => {
  const { belief, holds } = drawn(31, { bandAt: () => [-2.5, 2.5], values: [5, -4, 2, 3, -2, -3], wrong: 0 });
  const ready: Readiness = { ready: true, as: 'band', ends: { low: seen(-2, -3), high: seen(2, 3) } };
  const closing = (low: number, high: number, proven?: number) => {
    const remembered = { low: steps(low), high: steps(high), ...(proven !== undefined && { proven: steps(proven) }) };
    return closingOf({ belief: { ...belief, remembered }, holds, readiness: ready, care: 'standard', skipped: [], trustedUpTo: holds.length }).test;
  };
  const proof = { value: 0, reason: { because: 'proof' } };
  expect([closing(-2, 2), closing(-2, 2, 1), closing(-3, 2, 0), closing(-2, 3, 0)]).toEqual([proof, proof, proof, proof]);
  expect(closing(-2, 2, 0)).toBeNull();
  const again = { belief, readiness: ready, care: 'standard', skipped: [], trustedUpTo: holds.length + 1 } as const;
  expect(closingOf({ ...again, holds }).test).toEqual(proof);
  const atZero = drawn(31, { bandAt: () => [-2.5, 2.5], values: [5, 0], wrong: 0 }).holds.slice(1);
  expect(closingOf({ ...again, holds: [...holds, ...atZero] }).test).toBeNull();
});
