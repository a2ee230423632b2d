// Contract of what a voice is handed: no sign that only says how lines break.
import { expect, test } from 'vitest';
import { asSpoken } from '../../src/words/asSpoken.ts';
import { write } from '../../src/words/fr/write.ts';
import { millimetres } from '../../src/units.ts';

test('blanks that hold two words together are plain ones, and a place for a hyphen is nothing', () => {
  expect(asSpoken(`Prêt\u00a0? ${write.distance(millimetres(4250), 'm')}`)).toBe('Prêt ? 4,25 m');
  expect(asSpoken('die Sprach\u00aderkennung')).toBe('die Spracherkennung');
});
