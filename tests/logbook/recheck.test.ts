// Contract of a quick re-check: it starts from the old value, so where nothing has changed it is over in a few holds, and
// where the value has gone it is found anew.
import { expect, test } from 'vitest';
import type { LogRecord } from '../../src/logbook/record.ts';
import { memoryFor } from '../../src/logbook/memory.ts';
import { NO_MEMORY, type Memory } from '../../src/sweep/memory.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { USUAL_MANNER } from '../../src/sweep/usualManner.ts';
import { transition } from '../../src/sweep/transition.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import { later, opened } from '../sweep/staged.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const { kit } = libraryWith({});
const remembered = (low: number, high: number): Memory => memoryFor(kit.situations[0]!, [sweepRecord('r', T0, low, high) as LogRecord], kit);

/** Sweeps a band whose light never errs, at quick care, until the finish is offered. */
function swept(memory: Memory, low: number, high: number): { holds: number; chosen: number | null } {
  const plan = { scale: USUAL_SCALE, arrows: 'absent', manner: { ...USUAL_MANNER, care: 'quick' }, memory } as const;
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
  return { holds: state.holds.length, chosen: outcome?.found === 'band' ? outcome.chosen : null };
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
