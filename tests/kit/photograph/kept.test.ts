// What a photograph tells of its camera, kept over files that are cut short at each byte and changed here and there.
import { expect, test } from 'vitest';
import { apexOf, fNumberOf } from '../../../src/kit/photograph/apex.ts';
import { exifInJpeg, frameInJpeg, hasProfile } from '../../../src/kit/photograph/jpeg.ts';
import { offersOf, takenWith } from '../../../src/kit/photograph/offers.ts';
import { readPhotograph, type Photograph } from '../../../src/kit/photograph/photograph.ts';
import { pictureSizeOf } from '../../../src/kit/photograph/pictureSize.ts';
import { writtenPicture } from '../../../src/kit/photograph/written.ts';
import { EMPTY_KIT, newBody, newLens } from '../../../src/kit/kit.ts';
import { moment } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { jpegFile, tiffFile, VELDE, veldeWith, type FileParts, type Tagged } from '../photographFile.ts';

import { stretches } from './stretches.ts';

const ORDERS = ['little', 'big'] as const;
const fractions = (tag: number, ...value: readonly (readonly [number, number])[]): Tagged => ({ tag, value: { fractions: value } });
const tellsOf = (parts: FileParts): string => {
  const read = readPhotograph(tiffFile(parts), 60);
  return oneLine(read.ok ? Object.values(read.value) : read.fault);
};

test('a photograph that ends early', () => {
  expect(ORDERS.map((order) => stretches(tiffFile({ ...VELDE, order }), tellsPart))).toMatchSnapshot('as it is');
  expect(stretches(jpegFile(tiffFile(VELDE)), (part) => [exifInJpeg(part), frameInJpeg(part), pictureSizeOf(part), hasProfile(part)])).toMatchSnapshot(
    'in a picture',
  );
});

/** Whether each field is told, and what is wrong where none is. */
function tellsPart(part: Uint8Array): string {
  const read = readPhotograph(part, 60);
  return read.ok
    ? Object.values(read.value)
        .map((value) => Number(value !== null))
        .join('')
    : read.fault;
}

test('fields at the bounds of what a camera can mean', () => {
  const changed: readonly Tagged[] = [
    ...[49, 50, 64, 65, 640, 645, 0].map((over) => fractions(0x829d, [over, 10])),
    ...[3, 5, 10, 120, 121].map((over) => fractions(0x9205, [over, 10])),
    ...[39, 40, 41, 20_000, 20_004, 20_010].map((over) => fractions(0x920a, [over, 10])),
    ...[49, 50, 51, 500_000, 500_001, 0, 0xffffffff].map((over) => fractions(0x9206, [over, 1000])),
    fractions(0x9206, [1, 0]),
    fractions(0xa432, [24, 1], [70, 1], [28, 10]),
    fractions(0xa432, [70, 1], [24, 1], [28, 10], [4, 1]),
    fractions(0xa432, [24, 1], [70, 1], [28, 10], [0, 1]),
    { tag: 0xa434, value: { text: `${'x'.repeat(59)} y` } },
    { tag: 0xa434, value: { text: 'x'.repeat(61) } },
    { tag: 0x9003, value: { text: '2026:02:30 00:00:00' } },
    { tag: 0x9003, value: { text: 'yesterday' } },
    { tag: 0x9011, value: { text: '-05:30' } },
  ];
  expect(changed.map((each) => tellsOf(veldeWith(each)))).toMatchSnapshot();
  expect([0.5, 1, 1.4, 2.8, 64].map((fNumber) => Number(fNumberOf(apexOf(fNumber)).toFixed(9)))).toEqual([0.5, 1, 1.4, 2.8, 64]);
  expect([0, 2, 4, 6].map(fNumberOf)).toEqual([1, 2, 4, 8]);
});

test('the size and the sensor that the camera wrote', () => {
  const short = (tag: number, value: number): Tagged => ({ tag, value: { short: value } });
  const written = (width: number, height: number, across: readonly [number, number], down: readonly [number, number], unit: number | null) => {
    const exif = [
      short(0xa002, width),
      short(0xa003, height),
      fractions(0xa20e, across),
      fractions(0xa20f, down),
      ...(unit === null ? [] : [short(0xa210, unit)]),
    ];
    return oneLine(writtenPicture(tiffFile({ order: 'little', first: [], exif })));
  };
  type Written = readonly [number, number, readonly [number, number], readonly [number, number], number | null];
  const cases: readonly Written[] = [
    [6000, 4000, [4233, 1], [4233, 1], 2],
    [6000, 4000, [4233, 1], [4233, 1], null],
    [4000, 6000, [1667, 1], [1667, 1], 3],
    [6000, 4000, [167, 1], [167, 1], 4],
    [6000, 4000, [167, 1000], [167, 1000], 5],
    [6000, 4000, [167, 1], [167, 1], 6],
    [6000, 4000, [0, 1], [167, 1], 4],
    [6000, 4000, [167, 1], [0, 1], 4],
    [6000, 4000, [167, 0], [167, 1], 4],
    [6000, 4000, [1, 2], [1, 2], 4],
    [6000, 4000, [104, 1], [100, 1], 4],
    [6000, 4000, [103, 1], [100, 1], 4],
    [6000, 4000, [102, 1], [100, 1], 4],
    [6000, 4000, [97, 1], [100, 1], 4],
    [6000, 4000, [60, 1], [60, 1], 4],
    [6060, 4000, [60, 1], [60, 1], 4],
    [600, 400, [100, 1], [100, 1], 4],
    [600, 390, [100, 1], [100, 1], 4],
    [600, 500, [100, 1], [100, 1], 4],
    [0, 400, [100, 1], [100, 1], 4],
    [600, 0, [100, 1], [100, 1], 4],
  ];
  expect(cases.map((each) => written(...each))).toMatchSnapshot();
});

test('what a photograph offers the kit, and whose it is', () => {
  const read = readPhotograph(tiffFile(VELDE), 60);
  if (!read.ok) throw new Error(read.fault);
  expect(offersOf(read.value).map(oneLine)).toMatchSnapshot('offers');
  const kit = (...bodies: readonly { model: string | null; serial: string | null }[]) => ({
    ...EMPTY_KIT,
    bodies: bodies.map((body, at) => ({ ...newBody(`b${at}`, 'Velde', moment(0)), ...body })),
    lenses: [{ ...newLens('l', 'Orrin', moment(0)), model: 'Orrin 85mm f/1.8' }],
  });
  const [model, serial] = ['Velde M1', '004711'];
  const kits = [
    kit(),
    kit({ model, serial }),
    kit({ model: null, serial }),
    kit({ model: 'Velde M2', serial }),
    kit({ model, serial: null }),
    kit({ model, serial: '1' }),
    kit({ model, serial: null }, { model, serial: null }),
    kit({ model, serial: null }, { model, serial: '1' }),
    kit({ model, serial }, { model, serial }),
    kit({ model: null, serial: null }),
  ];
  const photographs: readonly Photograph[] = [
    read.value,
    { ...read.value, bodySerial: null },
    { ...read.value, bodyModel: null },
    { ...read.value, bodyModel: null, bodySerial: null, lensModel: null },
  ];
  expect(
    photographs.map((photograph) => oneLine(kits.map((each) => [takenWith(photograph, each).body?.id ?? null, takenWith(photograph, each).lens?.id ?? null]))),
  ).toMatchSnapshot('owners');
});
