// Contracts of what a photograph tells, at its limits: which numbers are sensible, which body and lens took it.
import { describe, expect, test } from 'vitest';
import { newBody, newLens, type Kit } from '../../src/kit/kit.ts';
import { focalInName } from '../../src/kit/focalInName.ts';
import { takenWith } from '../../src/kit/photograph/offers.ts';
import { readPhotograph, type Photograph } from '../../src/kit/photograph/photograph.ts';
import { writtenPicture } from '../../src/kit/photograph/written.ts';
import { moment } from '../../src/units.ts';
import { jpegFile, tiffFile, veldeWith, type Tagged } from './photographFile.ts';

const fraction = (tag: number, ...fractions: [number, number][]): Tagged => ({ tag, value: { fractions } });
function read(...fields: Tagged[]): Partial<Photograph> {
  const photograph = readPhotograph(jpegFile(tiffFile(veldeWith(...fields))), 0);
  return photograph.ok ? photograph.value : {};
}

describe('a photograph', () => {
  test('tells apertures from 0.5 to 64, to a tenth', () => {
    const aperture = (over: number, under: number) => read(fraction(0x829d, [over, under])).aperture;
    expect([aperture(49, 100), aperture(50, 100), aperture(64, 1), aperture(641, 10), aperture(178, 100)]).toEqual([null, 0.5, 64, null, 1.8]);
    // By APEX, Av = 2 log2 N: 5 is the root of 2 to the fifth.
    expect([read(fraction(0x9205, [5, 1])).widest, read(fraction(0x9205, [0, 1])).widest]).toEqual([5.7, null]);
  });

  test('tells lengths that a body can meet, to a tenth', () => {
    const focalLength = (over: number, under: number) => read(fraction(0x920a, [over, under])).focalLength;
    expect([focalLength(39, 10), focalLength(4, 1), focalLength(2000, 1), focalLength(2001, 1), focalLength(85_042, 1000)]).toEqual([null, 4, 2000, null, 85]);
    const distance = (over: number, under: number) => read(fraction(0x9206, [over, under])).distance;
    expect([distance(49, 1000), distance(5, 100), distance(500, 1), distance(501, 1), distance(0xffffffff, 1)]).toEqual([null, 50, 500_000, null, null]);
  });

  test('tells a lens’s range only where it is whole', () => {
    const range = (...fractions: [number, number][]) => {
      const { lensFocal, lensWidest } = read(fraction(0xa432, ...fractions));
      return [lensFocal, lensWidest];
    };
    expect(range([24, 1], [70, 1], [28, 10], [4, 1])).toEqual([{ from: 24, to: 70 }, { from: 2.8, to: 4 }]); // prettier-ignore
    expect(range([70, 1], [24, 1], [28, 10], [0, 1])).toEqual([null, null]);
    expect(range([24, 1], [0, 0], [0, 0], [4, 1])).toEqual([null, null]);
  });

  test('tells names of sixty signs at most', () => {
    expect(read({ tag: 0xa434, value: { text: 'x'.repeat(70) } }).lensModel).toHaveLength(60);
  });
});

describe('who took it', () => {
  const body = (id: string, model: string | null, serial: string | null) => ({ ...newBody(id, id, moment(0)), model, serial });
  const taken = (bodies: ReturnType<typeof body>[], bodyModel: string | null, bodySerial: string | null) =>
    takenWith(
      { bodyModel, bodySerial, lensModel: null, lensSerial: null } as Photograph,
      { bodies, lenses: [newLens('l', 'l', moment(0))], converters: [], situations: [] } as unknown as Kit,
    ).body?.id ?? null;

  test('is known by serial, of the same model or one that nobody wrote', () => {
    const two = [body('a', 'M', '1'), body('b', 'M', '2')];
    expect([taken(two, 'M', '2'), taken(two, 'N', '2'), taken([body('a', null, '1')], 'M', '1'), taken(two, 'M', '3'), taken(two, 'M', null)]).toEqual([
      'b',
      null,
      'a',
      null,
      null,
    ]);
    expect(taken([body('a', 'M', '1'), body('b', null, '1')], 'M', '1')).toBeNull();
  });

  test('or by model where only one has it, and no serial says otherwise', () => {
    expect([
      taken([body('a', 'M', null)], 'M', '1'),
      taken([body('a', 'M', '9')], 'M', null),
      taken([body('a', 'M', '9')], 'M', '1'),
      taken([body('a', 'M', null), body('b', 'M', '9')], 'M', '1'),
    ]).toEqual(['a', 'a', null, null]);
    expect([taken([body('a', null, null)], null, null), taken([body('a', 'M', null)], 'N', null)]).toEqual([null, null]);
  });
});

test('a sensor has sides of 4 to 100 mm, and pixels that are square to 0.03', () => {
  // In millimetres, 4; 1,000 by 800 pixels.
  const sensor = (across: [number, number], down: [number, number], unit = 4) => {
    const size: Tagged[] = [{ tag: 0xa002, value: { short: 1000 } }, { tag: 0xa003, value: { short: 800 } }]; // prettier-ignore
    const exif = [...size, fraction(0xa20e, across), fraction(0xa20f, down), { tag: 0xa210, value: { short: unit } }];
    return writtenPicture(jpegFile(tiffFile({ order: 'little', first: [], exif })))?.sensor ?? null;
  };
  expect([sensor([200, 1], [200, 1]), sensor([201, 1], [201, 1]), sensor([10, 1], [10, 1]), sensor([99, 10], [99, 10])]).toEqual([
    { width: 5, height: 4 },
    null,
    { width: 100, height: 80 },
    null,
  ]);
  expect([sensor([1029, 10], [100, 1]) !== null, sensor([104, 1], [100, 1]), sensor([971, 10], [100, 1]) !== null, sensor([96, 1], [100, 1])]).toEqual([
    true,
    null,
    true,
    null,
  ]);
  expect(sensor([1, 10], [1, 10], 5)).toEqual({ width: 10, height: 8 });
});

test('a name tells its focal length where only one of its numbers can be one', () => {
  expect(
    ['Corvid 85 f/1.8', 'Corvid 24-70 f/4', 'Corvid 24 to 70', 'Corvid 85 2', 'Corvid 85mm 50', 'Corvid 1.4x', 'Corvid 3', 'Corvid 70-24'].map(focalInName),
  ).toEqual([{ from: 85, to: 85 }, { from: 24, to: 70 }, { from: 24, to: 70 }, { from: 85, to: 85 }, { from: 85, to: 85 }, null, null, null]);
});
