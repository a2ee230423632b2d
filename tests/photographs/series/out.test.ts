// Contract of what does not belong to a series, at its limits, and of the order in which pictures were taken.
import { expect, test } from 'vitest';
import { outOfSeries } from '../../../src/photographs/series/outOfSeries.ts';
import { inOrderTaken } from '../../../src/photographs/series/seriesPicture.ts';
import { millimetres, moment } from '../../../src/units.ts';
import { libraryWith } from '../../logbook/libraryWith.ts';
import { seriesPicture } from './seriesPictures.ts';

const { kit } = libraryWith({ bodies: [{ id: 'b', model: 'Model B', serial: '1' }], lenses: [{ id: 'l' }] });
type Told = Parameters<typeof seriesPicture>[1];
/** The reason for the third of three, of which the first two are as usual. */
const reason = (told: Told): string | null =>
  outOfSeries([seriesPicture(1, { error: 1 }), seriesPicture(2, { error: 2 }), seriesPicture(3, { error: 3, ...told })], kit, null).get('p3') ?? null;

test('focal lengths may differ by 0.03, apertures by 0.06, sizes by 0.05, of the larger', () => {
  expect([87.6, 87.7, 82.5, 82.4].map((focalLength) => reason({ camera: { focalLength: millimetres(focalLength) } }))).toEqual([
    null,
    'another focal length',
    null,
    'another focal length',
  ]);
  expect([1.91, 1.92, 1.7, 1.69].map((aperture) => reason({ camera: { aperture } }))).toEqual([null, 'another aperture', null, 'another aperture']);
  expect([5.26, 5.27, 4.76, 4.74].map((scale) => reason({ scale }))).toEqual([null, 'another distance', null, 'another distance']);
});

test('what most share is the rule; of as many, what came first', () => {
  const of = (...apertures: number[]) =>
    [
      ...outOfSeries(
        apertures.map((aperture, at) => seriesPicture(at + 1, { error: at, camera: { aperture } })),
        kit,
        null,
      ).keys(),
    ].join(' ');
  expect([of(2, 4, 4), of(4, 2, 4), of(2, 4), of(2, 2, 4, 4), of(2, 4, 4, 2)]).toEqual(['p1', 'p2', 'p2', 'p3 p4', 'p2 p3']);
});

test('a body or lens of which only a part is known speaks against nothing in the other', () => {
  expect(reason({ camera: { bodySerial: null } })).toBeNull();
  expect(reason({ camera: { bodyModel: 'Model C', bodySerial: null } })).toBe('another body');
  expect(reason({ camera: { lensModel: null, lensSerial: '9' } })).toBe('another lens');
});

test('the same shot is one of a name that differs in its ending alone, or of the same figures, at one moment', () => {
  const taken = moment(60_000);
  const again = (told: Told) => [...outOfSeries([seriesPicture(1, { error: 1 }), seriesPicture(2, { error: 5, name: 'Q.JPG', ...told })], kit, null).values()];
  expect(again({ name: 'p1.nef', camera: { taken } })).toEqual(['the same shot']);
  expect(again({ name: 'p1.nef' })).toEqual([]);
  expect(again({ error: 1, camera: { taken } })).toEqual(['the same shot']);
  expect(again({ error: 1 })).toEqual([]);
  expect(again({ camera: { taken } })).toEqual([]);
});

test('pictures stand by time, then by name: numbers by their size, then letters, then length', () => {
  const taken = moment(0);
  const order = (...names: string[]) => inOrderTaken(names.map((name, at) => ({ ...seriesPicture(at, { camera: { taken } }), name }))).map(({ name }) => name);
  expect(order('D10', 'D9', 'D009', 'C99')).toEqual(['C99', 'D009', 'D9', 'D10']);
  expect(order('D1a', 'D1', 'D1B')).toEqual(['D1', 'D1B', 'D1a']);
  expect(order('a', '1')).toEqual(['1', 'a']);
  expect(inOrderTaken([2, 1].map((at) => ({ ...seriesPicture(at), name: `${9 - at}` }))).map(({ id }) => id)).toEqual(['p1', 'p2']);
});
