// What follows from the kit (names, changes, warnings, parts told, older logbooks), kept for every arrangement that matters.
import { expect, test } from 'vitest';
import { focalInName } from '../../src/kit/focalInName.ts';
import { pairingsOf, subjectIn } from '../../src/kit/kit.ts';
import { widestAt, zooms } from '../../src/kit/lens.ts';
import { distanceOf, isSameName, onlyFocal, partsOf } from '../../src/kit/told.ts';
import { wholeKit } from '../../src/kit/wholeKit.ts';
import { millimetres as mm } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';
import { kit } from './arrangements.ts';

test('the parts of a sweep, its subject and its pairing', () => {
  const pairing = pairingsOf(kit);
  expect(
    kit.situations.map((each) =>
      oneLine([subjectIn(kit, each), partsOf(subjectIn(kit, each), kit), Object.values(pairing(each)).map((piece) => piece?.id ?? null)]),
    ),
  ).toMatchSnapshot('kept');
  const stranger = { situation: 'gone', body: 'A', lens: 'B', focalLength: mm(35), distance: mm(900) };
  expect(oneLine(partsOf(stranger, kit))).toMatchSnapshot('unknown');
  const told = { situation: null, body: null, lens: null, converter: null, focalLength: null, distance: null };
  const converter = { id: 'c', name: 'x' };
  const tellings = [
    told,
    { ...told, distance: mm(700) },
    { ...told, focalLength: mm(33) },
    { ...told, focalLength: mm(33), converter },
    { ...told, focalLength: mm(33.333), converter },
    { ...told, focalLength: mm(33), distance: mm(700) },
  ];
  expect(oneLine(tellings.map((each) => distanceOf(each, kit)))).toMatchSnapshot('distances');
});

test('focal lengths in names, the only one of a lens, and names that are one', () => {
  const names = [
    'Orrin 85 f/1.8',
    'Orrin 24-70 f/4',
    'Orrin 24 to 70mm',
    'Orrin 70-24',
    'Orrin II 50',
    'Orrin 1.4x',
    'Orrin 50 35',
    'Orrin 50mm 35',
    'Orrin 50mm 35mm',
    'Orrin',
    '3',
    '4',
    '2000',
    '2001',
    'F4 300',
    '1:2.8 135',
    '17,5mm',
    'A7 85',
    '85mm85',
  ];
  expect(names.map((name) => oneLine([name, focalInName(name), onlyFocal({ name, focal: null })]))).toMatchSnapshot();
  expect(onlyFocal({ name: 'Orrin 85', focal: { from: mm(24), to: mm(70) } })).toBeNull();
  expect([isSameName('Orrin 85', 'ORRIN８5'), isSameName('a', 'b')]).toEqual([true, false]);
});

test('the widest aperture along a zoom', () => {
  const lens = { ...kit.lenses[0]!, focal: { from: mm(24), to: mm(70) }, widest: { from: 2.8, to: 4 } };
  expect(oneLine([10, 24, 24.5, 47, 69.5, 70, 90].map((focal) => widestAt(lens, focal)))).toMatchSnapshot();
  expect([
    widestAt({ ...lens, widest: null }, 30),
    widestAt({ ...lens, focal: null }, 30),
    widestAt({ ...lens, focal: { from: mm(24), to: mm(24) } }, 90),
  ]).toEqual([null, 2.8, 2.8]);
  expect([zooms(lens), zooms({ ...lens, focal: null }), zooms({ ...lens, focal: { from: mm(24), to: mm(24) } })]).toEqual([true, false, false]);
});

test('a kit of the first version, whole or damaged', () => {
  const kits = [
    null,
    7,
    [],
    {},
    { bodies: 3 },
    {
      bodies: [{ id: 'b', name: 'x', changed: 4 }, 5, null, []],
      lenses: [{ id: 'l', focal: 1 }],
      situations: [{ id: 's', converter: 'c' }],
      converters: ['c'],
    },
  ];
  expect(kits.map((each) => oneLine(wholeKit(each)))).toMatchSnapshot();
});
