// Contract of a re-check: it starts from the old value, so where nothing has changed it is over in a few holds, and where the
// value has gone it is found anew. Beyond quick care an end that is found where it was is believed after one new hold there.
import { expect, test } from 'vitest';
import type { LogRecord } from '../../src/logbook/record.ts';
import { memoryFor } from '../../src/logbook/memory.ts';
import { NO_MEMORY, type Memory } from '../../src/sweep/memory.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import { transition } from '../../src/sweep/transition.ts';
import type { Care } from '../../src/sweep/care.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { later, opened } from '../sweep/staged.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const { kit } = libraryWith({});
const remembered = (low: number, high: number): Memory => memoryFor(kit.situations[0]!, [sweepRecord('r', T0, low, high) as LogRecord], kit);

/** Sweeps a band whose light never errs until the finish is offered. */
function swept(memory: Memory, low: number, high: number, care: Care = 'quick'): { holds: number; chosen: number | null; held: readonly number[] } {
  const plan = { scale: USUAL_SCALE, arrows: 'absent', manner: { ...USUAL_MANNER, care }, memory } as const;
  let state: SweepState = openSweep(opened(plan)).state;
  for (let hold = 0; hold < 40 && state.phase.name === 'dialling'; hold++) {
    const { value } = state.phase.next;
    const outside = Math.max(low - value, value - high);
    const light = outside <= 0 ? 'steady' : outside <= 1 ? 'late' : outside <= 6 ? 'flicker' : 'dark';
    const at = 10 + hold * 10;
    const events = [
      { did: 'began', at: later(at), value, by: 'key' } as const,
      ...(light === 'steady' ? [{ did: 'ran', at: later(at + 5) } as const] : []),
      { did: 'judged', at: later(at + 6), verdict: { light, arrows: 'none' }, by: 'key', heard: null } as const,
    ];
    state = events.reduce((before, event) => transition(before, event).state, state);
  }
  const outcome = state.phase.name === 'offered' ? state.phase.outcome : null;
  return { holds: state.holds.length, chosen: outcome?.found === 'band' ? outcome.chosen : null, held: state.holds.map(({ value }) => value) };
}

const BANDS = [
  [2, 9],
  [-13, -5],
  [-3, 1],
] as const;

test.each(BANDS)('of %i to %i, where nothing has changed, takes fewer holds than a first sweep and finds the same', (low, high) => {
  const again = swept(remembered(low, high), low, high);
  expect(Math.abs((again.chosen ?? NaN) - (low + high) / 2)).toBeLessThanOrEqual(1);
  expect(again.holds).toBeLessThan(swept(NO_MEMORY, low, high).holds);
});

test.each(BANDS)('of %i to %i finds the band also where it has moved away', (low, high) => {
  const again = swept(remembered(low, high), low + 6, high + 6);
  expect(Math.abs((again.chosen ?? NaN) - (low + high) / 2 - 6)).toBeLessThanOrEqual(1);
});

/** At either end: which of its two marginal values were held. */
const marginal = (held: readonly number[], low: number, high: number) => [
  [low, low - 1].filter((value) => held.includes(value)),
  [high, high + 1].filter((value) => held.includes(value)),
];

test.each(BANDS)('of %i to %i at standard care takes seven tenths of a first sweep, with a new hold at either end', (low, high) => {
  const again = swept(remembered(low, high), low, high, 'standard');
  expect(again.holds).toBeLessThanOrEqual(0.7 * swept(NO_MEMORY, low, high, 'standard').holds);
  for (const end of marginal(again.held, low, high)) expect(end.length).toBeGreaterThan(0);
});

test('at standard care takes fewer holds with the old ends than without them', () => {
  const bands = [-12, -7, -2, 3, 8].flatMap((low) => [3, 6, 9].map((width) => [low, Math.min(19, low + width)] as const));
  const holds = (ends: boolean) =>
    bands.reduce((all, [low, high]) => {
      const { ends: old, ...without } = remembered(low, high);
      return all + swept(ends && old ? { ...without, ends: old } : without, low, high, 'standard').holds;
    }, 0);
  expect(holds(true)).toBeLessThan(0.95 * holds(false));
});

test.each(BANDS)('of %i to %i at standard care holds both values of an end that has moved', (low, high) => {
  const again = swept(remembered(low, high), low + 3, high + 3, 'standard');
  expect(again.chosen === null ? null : Math.abs(again.chosen - (low + high) / 2 - 3)).toBeLessThanOrEqual(0.5);
  expect(marginal(again.held, low + 3, high + 3).map(({ length }) => length)).toEqual([2, 2]);
});

test.each(BANDS)('of %i to %i at thorough care believes no end unheld', (low, high) => {
  const again = swept(remembered(low, high), low, high, 'thorough');
  expect(marginal(again.held, low, high).map(({ length }) => length)).toEqual([2, 2]);
});

test('of a record with half of the true width ends, and finds the band', () => {
  expect(swept(remembered(-9, -5), -9, -1, 'standard')).toMatchObject({ chosen: -5 });
});
