// Contract of erasing what was heard: the words go, whatever they are kept in, and the holds stay.
import { expect, test } from 'vitest';
import { withoutHeard } from '../../src/logbook/withoutHeard.ts';

const journal = [
  { did: 'opened', at: 1, id: 's', plan: {} },
  { did: 'heard', at: 2, guesses: ['holding', 'folding'], became: 'taken' },
  { did: 'began', at: 2, value: 3, by: 'voice' },
  { did: 'judged', at: 9, verdict: { light: 'flicker', arrows: 'none' }, by: 'voice', heard: 'flick her' },
];

test('heard events are left out and the words of verdicts are blank, and everything else stays', () => {
  expect(withoutHeard({ id: 'r', journal })).toEqual({ id: 'r', journal: [journal[0], journal[2], { ...journal[3], heard: null }] });
});

test('what holds no heard word is the very same', () => {
  const stored = { settings: { voice: { listen: 'own' } }, list: [1, 'heard', null], journal: [journal[0], journal[2]] };
  expect(withoutHeard(stored)).toBe(stored);
});
