// Contract of the guess at the holds to come: none when the finish may be offered, otherwise a whole number of at least one, and
// about what a sweep of that care takes before the first hold. How often it is true, the bench counts.
import { expect, test } from 'vitest';
import type { Care } from '../../../src/sweep/care.ts';
import { readiness } from '../../../src/sweep/end/care.ts';
import { heldValues } from '../../../src/sweep/end/ends.ts';
import { holdsToCome } from '../../../src/sweep/end/remaining.ts';
import type { Opened } from '../../../src/sweep/event.ts';
import { openSweep } from '../../../src/sweep/opening.ts';
import type { SweepState } from '../../../src/sweep/state.ts';
import { transition } from '../../../src/sweep/transition.ts';
import { opened } from '../staged.ts';
import { practised } from '../trouble/practised.ts';

const left = ({ belief, holds }: Pick<SweepState, 'belief' | 'holds'>, care: Care): number =>
  holdsToCome(belief, readiness(belief, heldValues(holds), care), care);

test('before the first hold it is about what a sweep of that care takes, and more for more care', () => {
  const { state } = openSweep(opened());
  const [quick, standard, thorough] = (['quick', 'standard', 'thorough'] as const).map((care) => left(state, care)) as [number, number, number];
  expect(quick).toBeGreaterThanOrEqual(6);
  expect(standard).toBeGreaterThan(quick);
  expect(thorough).toBeGreaterThan(standard);
  expect(thorough).toBeLessThanOrEqual(18);
});

test('at least one until the finish is offered, then none', () => {
  const { state } = practised(3, null);
  expect(state.phase.name).toBe('offered');
  const { care } = state.plan.manner;
  const [first, ...rest] = state.journal;
  let then = openSweep(first as Opened).state;
  for (const event of rest) {
    const guess = left(then, care);
    const { ready } = readiness(then.belief, heldValues(then.holds), care);
    expect({ ready, guess, fits: Number.isInteger(guess) && (ready ? guess === 0 : guess >= 1) }).toMatchObject({ fits: true });
    then = transition(then, event).state;
  }
  expect(left(then, care)).toBe(0);
});
