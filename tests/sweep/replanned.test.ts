// Contract of a sweep whose plan was told more of: the same holds on another plan, or none where one would be lost or read in another way.
import { expect, test } from 'vitest';
import { replanned } from '../../src/sweep/replanned.ts';
import type { SweepEvent } from '../../src/sweep/event.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import type { Verdict } from '../../src/sweep/verdict.ts';
import { seconds, steps } from '../../src/units.ts';
import { after, later, opened, SUBJECT } from './staged.ts';

/** Holds of six seconds, each at the value that was suggested. */
function played(...verdicts: readonly Verdict[]) {
  let state = openSweep(opened()).state;
  const journal: SweepEvent[] = [opened()];
  for (const [at, verdict] of verdicts.entries()) {
    const value = state.phase.name === 'dialling' ? state.phase.next.value : steps(0);
    const told = [
      { did: 'began', at: later(10 * at + 10), value, by: 'key' },
      { did: 'judged', at: later(10 * at + 16), verdict, by: 'key', heard: null },
    ] as const satisfies readonly SweepEvent[];
    journal.push(...told);
    state = after(state, ...told);
  }
  return { state, journal };
}
const STEADY: Verdict = { light: 'steady', arrows: 'none' };
const LEFT: Verdict = { light: 'late', arrows: 'left' };

test('what moves no value leaves all as it is, under the new plan', () => {
  const { state, journal } = played(STEADY, LEFT);
  const plan = { ...state.plan, subject: { ...SUBJECT, lens: 'Orrin 85 f/1.4' } };
  const told = replanned(journal, state, plan)!;
  expect(told.state).toMatchObject({ plan, holds: state.holds, phase: state.phase });
  expect(told.journal[0]).toMatchObject({ did: 'opened', plan });
  expect(told.journal.slice(1)).toEqual(journal.slice(1));
  expect(told.state.journal[0]).toMatchObject({ plan });
});

test('another hold time is replayed with the same holds, and not where they were too short for it', () => {
  const { state, journal } = played(STEADY, LEFT);
  const lasting = (time: number) => replanned(journal, state, { ...state.plan, manner: { ...state.plan.manner, holdTime: seconds(time) } });
  expect(lasting(4)?.state.holds.map(({ value, verdict }) => [value, verdict])).toEqual(state.holds.map(({ value, verdict }) => [value, verdict]));
  expect(lasting(4)?.state.plan.manner.holdTime).toBe(4);
  expect(lasting(7)).toBeNull();
});

test('a body without arrows takes no hold with one, and takes the others', () => {
  const absent = (state: ReturnType<typeof played>['state']) => ({ ...state.plan, arrows: 'absent' as const });
  const arrowed = played(STEADY, LEFT);
  expect(replanned(arrowed.journal, arrowed.state, absent(arrowed.state))).toBeNull();
  const plain = played(STEADY);
  expect(replanned(plain.journal, plain.state, absent(plain.state))?.state.holds).toHaveLength(1);
  expect(replanned(arrowed.journal, arrowed.state, { ...arrowed.state.plan, arrows: 'right-is-down' })).not.toBeNull();
});

test('a scale that does not have a value that was held takes none of it', () => {
  const { state, journal } = played(STEADY, LEFT);
  const narrow = { min: steps(50), max: steps(58), step: 1 };
  expect(replanned(journal, state, { ...state.plan, scale: narrow, start: steps(54) })?.state.holds ?? null).toBeNull();
});
