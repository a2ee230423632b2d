// Contract of the other situations of a lens: every one in use of the same piece of glass, also behind a converter and on another body, in
// the order of focal length and distance.
import { expect, test } from 'vitest';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { othersOfLens } from '../../src/logbook/sameLens.ts';
import { shelfOf } from '../../src/logbook/shelf.ts';
import { libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

/** The others of situation `s`, by id. */
function others(parts: Parts): readonly string[] {
  const shelf = shelfOf(libraryWith(parts), { at: T0, temperature: null }, USUAL_LIMITS);
  const one = shelf.find(({ subject }) => subject.situation === 's');
  return one ? othersOfLens(shelf, one).map(({ subject }) => subject.situation) : [];
}

test('they stand from the shortest focal length to the longest, near before far, whichever body or converter', () => {
  const situations = [
    { id: 's', focalLength: 70, distance: 3500 },
    { id: 'long', focalLength: 200, distance: 3500 },
    { id: 'far', focalLength: 70, distance: 9000, body: 'b2' },
    { id: 'near', focalLength: 70, distance: 2000, converter: 'c' },
  ];
  expect(others({ bodies: [{ id: 'b' }, { id: 'b2', name: 'Velde M2' }], converters: [{ id: 'c' }], situations })).toEqual(['near', 'far', 'long']);
});

test('another lens is none of them, not even one of the same name, and neither is what was put away', () => {
  const situations = [{ id: 's' }, { id: 'copy', lens: 'l2', distance: 2000 }, { id: 'away', distance: 9000, retired: T0 }];
  expect(others({ lenses: [{ id: 'l' }, { id: 'l2' }], situations })).toEqual([]);
});

test('what only records know is told by the name of its lens', () => {
  const subject = { situation: 'old', body: 'Velde M0', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 9000 };
  const other = { ...subject, situation: 'older', lens: 'Orrin 35 f/2' };
  const records = [sweepRecord('r', T0, 2, 8, { subject }), sweepRecord('r2', T0, 2, 8, { subject: other })];
  expect(others({ records })).toEqual(['old']);
});
