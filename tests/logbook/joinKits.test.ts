import { expect, test } from 'vitest';
import { joinKits } from '../../src/logbook/backup/joinKits.ts';
import { libraryWith } from './libraryWith.ts';

const kit = (...bodies: { id: string; changed?: number }[]) => libraryWith({ bodies }).kit;

test('two states of one kit are joined, and it is told whether the foreign one holds all of it', () => {
  const [mine, theirs] = [kit({ id: 'b', changed: 5 }), kit({ id: 'b', changed: 9 })];
  expect(joinKits(mine, mine)).toEqual({ kit: mine, known: true });
  // The newer state counts.
  expect(joinKits(mine, theirs)).toEqual({ kit: theirs, known: true });
  expect(joinKits(theirs, mine)).toEqual({ kit: theirs, known: false });
  const both = joinKits(kit({ id: 'b' }, { id: 'x' }), kit({ id: 'b' }, { id: 'y' }));
  expect([both.kit.bodies.map(({ id }) => id).toSorted(), both.known]).toEqual([['b', 'x', 'y'], false]);
});

test('another order is no other state', () => {
  const [one, other] = [kit({ id: 'b' }, { id: 'x' }), kit({ id: 'x' }, { id: 'b' })];
  expect(joinKits(one, other)).toEqual({ kit: one, known: true });
});
