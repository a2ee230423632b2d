import { expect, test } from 'vitest';
import { replay } from '../../src/sweep/transition.ts';
import { inPhase, later, opened } from './staged.ts';

test('a journal kept when no question about the focus was asked yet goes on past it', () => {
  const asked = inPhase('checking');
  const journal = [
    opened(),
    ...asked.journal.slice(1),
    { did: 'began', at: later(900), value: asked.dialled, by: 'key' } as const,
    { did: 'judged', at: later(902), verdict: { light: 'dark', arrows: 'right' }, by: 'key', heard: null } as const,
  ];
  expect(replay(journal).holds).toHaveLength(asked.holds.length + 1);
});

test('an answer to the question is taken as the answer', () => {
  const asked = inPhase('checking');
  const journal = [opened(), ...asked.journal.slice(1), { did: 'checked', at: later(900), focus: 'moved', by: 'key' } as const];
  expect(replay(journal).spent).toHaveLength(asked.holds.length);
});

test('a sweep with a memory opens where the logbook remembers the centre, and says since when', () => {
  const from = { at: later(0), of: 'situation' } as const;
  const memory = { centres: [{ centre: 5, sd: 1, weight: 1, from }], halfWidth: null };
  expect(replay([opened({ memory })]).phase).toMatchObject({ next: { value: 5, reason: { because: 'remembered', from } } });
});
