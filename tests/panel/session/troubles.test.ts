// Contract of the list of troubles: each kind once, and one that was read stays away until it is mended.
import { expect, test } from 'vitest';
import { createTroubles } from '../../../src/panel/session/troubles.ts';

const sentences = ({ list }: ReturnType<typeof createTroubles>) => list.value.map(({ sentence }) => sentence);

test('a trouble that comes again is listed once', () => {
  const troubles = createTroubles();
  troubles.add('speech', 'No voice.');
  const before = troubles.list.value;
  troubles.add('speech', 'No voice.');
  expect(troubles.list.value).toBe(before);
});

test('a trouble that was read stays away while it lasts, and comes back when it is new', () => {
  const troubles = createTroubles();
  troubles.add('speech', 'No voice.');
  troubles.dismiss('speech');
  troubles.add('speech', 'No voice.');
  expect(sentences(troubles)).toEqual([]);
  troubles.clear('speech');
  troubles.add('speech', 'No voice.');
  expect(sentences(troubles)).toEqual(['No voice.']);
  troubles.add('speech', 'Another fault.');
  expect(sentences(troubles)).toEqual(['Another fault.']);
});
