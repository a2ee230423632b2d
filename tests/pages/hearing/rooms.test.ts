// Contract of the rooms of the hearing check: every group of words stands in one of four, a sweep's seven first, and the room open by
// itself is the one in which something is still to be taught.
import { expect, test } from 'vitest';
import { openRoomOf, roomsOf, wordsOf } from '../../../src/pages/hearing/rooms.ts';
import { firstWordsIn, wordGroupsIn } from '../../../src/voice/wordGroups.ts';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';

const FIRST_WORDS = firstWordsIn(ENGLISH_WRITTEN);
const WORD_GROUPS = wordGroupsIn(ENGLISH_WRITTEN);

const LENSES = { is: 'lenses', words: ['Orrin 85'] } as const;
const ROOMS = roomsOf([...WORD_GROUPS, LENSES]);

test('every word is in one room and no other, the seven of a sweep in the first, the names of lenses with the logbook', () => {
  expect(ROOMS.map(({ is }) => is)).toEqual(['sweep', 'walk', 'logbook', 'rest']);
  expect(wordsOf(ROOMS[0]!)).toEqual(FIRST_WORDS);
  expect(wordsOf(ROOMS[2]!)).toContain('Orrin 85');
  const all = ROOMS.flatMap(wordsOf);
  expect(all.toSorted()).toEqual([...WORD_GROUPS, LENSES].flatMap(({ words }) => [...words]).toSorted());
});

test('the first room with a word that is not taught is open, and none once all are', () => {
  expect(openRoomOf(ROOMS, new Set(), null)).toBe('sweep');
  expect(openRoomOf(ROOMS, new Set(FIRST_WORDS.slice(1)), null)).toBe('sweep');
  expect(openRoomOf(ROOMS, new Set(FIRST_WORDS), null)).toBe('walk');
  expect(openRoomOf(ROOMS, new Set(ROOMS.flatMap(wordsOf)), null)).toBeNull();
});

test('while a word is taught its room is open', () => {
  for (const room of ROOMS) for (const word of wordsOf(room)) expect(openRoomOf(ROOMS, new Set(), word)).toBe(room.is);
});
