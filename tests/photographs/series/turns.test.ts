import { expect, test } from 'vitest';
import { millimetres, moment } from '../../../src/units.ts';
import { turnsOf } from '../../../src/photographs/series/turns.ts';
import { libraryWith } from '../../logbook/libraryWith.ts';
import { seriesPicture } from './seriesPictures.ts';

const { kit } = libraryWith({
  bodies: [
    { id: 'b', model: 'Model B', serial: '1' },
    { id: 'b2', model: 'Model B', serial: '9' },
  ],
  lenses: [{ id: 'l' }],
});
const named = (pictures: readonly { id: string }[]): string[] => pictures.map(({ id }) => id);

test('pictures stand in the order they were taken, whatever order they were brought in', () => {
  expect(
    named(
      turnsOf(
        [3, 1, 2].map((place) => seriesPicture(place)),
        kit,
        null,
      ).taken,
    ),
  ).toEqual(['p1', 'p2', 'p3']);
});

test('pictures of one second stand by the number in their names, and so do all where a camera wrote no time', () => {
  const taken = moment(0);
  const quick = [seriesPicture(1, { name: 'D10.JPG', error: 1, camera: { taken } }), seriesPicture(2, { name: 'D9.JPG', camera: { taken } })];
  expect(named(turnsOf(quick, kit, null).taken)).toEqual(['p2', 'p1']);
  const untimed = [seriesPicture(1, { name: 'D10.JPG' }), seriesPicture(2, { name: 'D009.JPG', camera: null }), seriesPicture(3, { name: 'D8.JPG' })];
  expect(named(turnsOf(untimed, kit, null).taken)).toEqual(['p3', 'p2', 'p1']);
});

test.each([
  ['another body', { camera: { bodySerial: '7' } }],
  ['another lens', { camera: { lensModel: 'Model K' } }],
  ['another focal length', { camera: { focalLength: millimetres(70) } }],
  ['another aperture', { camera: { aperture: 2.8 } }],
  ['another distance', { scale: 5.4 }],
] as const)('a picture with %s stays out and takes no turn, and the rest goes on', (reason, told) => {
  const { taken, out } = turnsOf([seriesPicture(1), seriesPicture(2, told), seriesPicture(3), seriesPicture(4)], kit, null);
  expect(named(taken)).toEqual(['p1', 'p3', 'p4']);
  expect([...out]).toEqual([['p2', reason]]);
});

test('what the situation is of decides where it is known, even against all pictures', () => {
  const others = [1, 2].map((place) => seriesPicture(place, { camera: { bodySerial: '9' } }));
  expect(turnsOf(others, kit, null).out.size).toBe(0);
  expect([...turnsOf(others, kit, 's').out.values()]).toEqual(['another body', 'another body']);
  const longer = seriesPicture(1, { camera: { focalLength: millimetres(105) } });
  expect([...turnsOf([longer], kit, 's').out.values()]).toEqual(['another focal length']);
});

test('what no camera wrote speaks against nothing, and a picture reduced in size is of the same distance', () => {
  const half = { ...seriesPicture(2, { camera: null, scale: 2.5 }), frame: { width: 2000, height: 3000 } };
  expect(named(turnsOf([seriesPicture(1), half], kit, 's').taken)).toHaveLength(2);
});

test('a picture without any target takes no turn, one in which focus cannot be told does', () => {
  const { taken } = turnsOf([seriesPicture(1), seriesPicture(2, { found: false }), seriesPicture(3, { error: null })], kit, null);
  expect(named(taken)).toEqual(['p1', 'p3']);
});

test('a shot counts once: as raw file and JPEG, and brought in again under another name', () => {
  const taken = moment(60_000);
  const again = [
    seriesPicture(1, { name: 'D1.JPG', error: 4, camera: { taken } }),
    seriesPicture(2, { name: 'd1.nef', error: 4.2, camera: { taken } }),
    seriesPicture(3, { name: 'D1 (1).JPG', error: 4, camera: { taken } }),
    seriesPicture(4, { name: 'D2.JPG', error: 5, camera: { taken } }),
    seriesPicture(5, { name: 'D1.JPG', error: 4 }),
  ];
  const { taken: turns, out } = turnsOf(again, kit, null);
  expect(turns).toHaveLength(3);
  expect([...out.values()]).toEqual(['the same shot', 'the same shot']);
});
