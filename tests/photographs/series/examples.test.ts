// Contract of which pictures a series is remembered by: the first in live view, and of those with autofocus the one nearest to what was found.
import { expect, test } from 'vitest';
import type { CheckPart } from '../../../src/photographs/series/checkParts.ts';
import { examplesOf } from '../../../src/photographs/series/examples.ts';
import { seriesPicture } from './seriesPictures.ts';

const pictures = [0, 9, 12, 30, 11].map((error, place) => seriesPicture(place, { error }));
const partsOf = (...parts: readonly CheckPart[]) => new Map(parts.map((part, place) => [`p${place}`, part]));

test('the shot nearest to the error that was found, never one left out or one in live view', () => {
  expect(examplesOf(pictures, partsOf('live view', 'near', 'far', 'near', 'left out'), 11)).toEqual({ reference: 'p0', shot: 'p2' });
  expect(examplesOf(pictures, partsOf('live view', 'live view', 'left out', 'near', 'far'), 9)).toEqual({ reference: 'p0', shot: 'p4' });
});

test('none where there is none, nor one in which focus cannot be told', () => {
  expect(examplesOf(pictures, partsOf('near'), 0)).toEqual({ reference: null, shot: 'p0' });
  expect(examplesOf([seriesPicture(0, { error: null })], partsOf('live view'), 0)).toEqual({ reference: null, shot: null });
});
