// Contract of replaying a kept journal: every hold is there as it stood, also those that were taken back, and the last
// stage is what the journal adds up to.
import { expect, test } from 'vitest';
import { stagesOf } from '../../src/sweep/replayed.ts';
import { replay } from '../../src/sweep/transition.ts';
import { inPhase, later, opened } from './staged.ts';

test('a sweep is replayed hold by hold, and ends as it ended', () => {
  const journal = [...inPhase('offered').journal, { did: 'finished', at: later(900), by: 'key' } as const];
  const stages = stagesOf(journal);
  const holds = replay(journal).holds;
  expect(stages.map(({ is }) => is)).toEqual(['opened', ...holds.map(() => 'held'), 'finished']);
  expect(stages.map(({ state }) => state.holds.length)).toEqual([0, ...holds.map((_, index) => index + 1), holds.length]);
  expect(stages.at(-1)?.state).toEqual(replay(journal));
});

test('a verdict that was taken back, and a series begun afresh, are seen as such', () => {
  const began = { did: 'began', at: later(10), value: 0, by: 'key' } as const;
  const judged = { did: 'judged', at: later(12), verdict: { light: 'dark', arrows: 'none' }, by: 'key', heard: null } as const;
  const undone = stagesOf([opened(), began, judged, { did: 'undid', at: later(13), by: 'key' }] as never);
  expect(undone.map(({ is, state }) => [is, state.holds.length])).toEqual([
    ['opened', 0],
    ['held', 1],
    ['taken back', 0],
  ]);
  const afresh = stagesOf([...inPhase('checking').journal, { did: 'checked', at: later(900), focus: 'moved', by: 'key' }]);
  expect(afresh.at(-1)).toMatchObject({ is: 'begun afresh', state: { holds: [] } });
});

test('arrows told after the light belong to the hold they were told for', () => {
  const journal = [
    opened(),
    { did: 'began', at: later(10), value: 0, by: 'key' },
    { did: 'judged', at: later(12), verdict: { light: 'dark', arrows: 'none' }, by: 'key', heard: null },
    { did: 'amended', at: later(13), arrows: 'left', by: 'key', heard: null },
  ] as never;
  expect(stagesOf(journal).map(({ is, state }) => [is, state.holds.at(-1)?.verdict.arrows])).toEqual([
    ['opened', undefined],
    ['held', 'left'],
  ]);
});
