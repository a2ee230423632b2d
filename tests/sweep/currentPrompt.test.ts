import { expect, test } from 'vitest';
import { currentPrompt } from '../../src/sweep/currentPrompt.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { moment, seconds } from '../../src/units.ts';

test('too early is told with what is left of the hold, and never less than nothing', () => {
  const state = { phase: { name: 'holding', since: moment(10_000) }, plan: { manner: { holdTime: seconds(5) } } } as unknown as SweepState;
  expect([10_000, 12_000, 15_000, 19_000].map((now) => currentPrompt(state, moment(now)))).toEqual([5, 3, 0, 0].map((left) => ({ say: 'too early', left })));
});
