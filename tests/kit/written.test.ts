// Contract of what a camera wrote of the picture itself: its size, and the sensor's where the density of its pixels makes one.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writtenPicture } from '../../src/kit/photograph/written.ts';
import { jpegFile, tiffFile, type Tagged } from './photographFile.ts';

const SIZE: readonly Tagged[] = [
  { tag: 0xa002, value: { short: 6000 } },
  { tag: 0xa003, value: { short: 4000 } },
];
const density = (across: readonly [number, number], down: readonly [number, number], unit?: number): Tagged[] => [
  { tag: 0xa20e, value: { fractions: [across] } },
  { tag: 0xa20f, value: { fractions: [down] } },
  ...(unit === undefined ? [] : [{ tag: 0xa210, value: { short: unit } }]),
];
const read = (exif: readonly Tagged[]) => writtenPicture(jpegFile(tiffFile({ order: 'little', first: [], exif })));

describe('what the camera wrote of the picture', () => {
  test.each([
    // 6000 pixels on 36 mm are 4233.3 to an inch, 1666.7 to a centimetre.
    ['inches', density([42_333, 10], [42_333, 10])],
    ['inches, said', density([42_333, 10], [42_333, 10], 2)],
    ['centimetres', density([16_667, 10], [16_667, 10], 3)],
  ])('is its size and the sensor’s, counted in %s', (_, exif) => {
    const written = read([...SIZE, ...exif]);
    expect(written?.frame).toEqual({ width: 6000, height: 4000 });
    expect([written?.sensor?.width, written?.sensor?.height]).toEqual([expect.closeTo(36, 1), expect.closeTo(24, 1)]);
  });

  test('has the longer side as the sensor’s width, also of a picture that was stored upright', () => {
    const upright: Tagged[] = [
      { tag: 0xa002, value: { short: 4000 } },
      { tag: 0xa003, value: { short: 6000 } },
    ];
    expect(read([...upright, ...density([42_333, 10], [42_333, 10])])?.sensor?.width).toBeCloseTo(36, 1);
  });

  test('makes no sensor of pixels that are not square, of no density, of another unit, or of a density for print', () => {
    for (const exif of [
      [],
      density([42_333, 10], [21_166, 10]),
      density([0, 1], [0, 1]),
      density([1, 0], [1, 0]),
      density([4233, 1], [4233, 1], 1),
      density([300, 1], [300, 1]),
    ]) {
      expect(read([...SIZE, ...exif])).toEqual({ frame: { width: 6000, height: 4000 }, sensor: null });
    }
  });

  test('is nothing where the size is missing, and any bytes are borne', () => {
    expect(read(density([42_333, 10], [42_333, 10]))).toBeNull();
    expect(writtenPicture(new Uint8Array())).toBeNull();
    const whole = jpegFile(tiffFile({ order: 'big', first: [], exif: [...SIZE, ...density([42_333, 10], [42_333, 10], 2)] }));
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 8 }), fc.nat(whole.length), (changes, length) => {
        const damaged = whole.slice(0, length);
        for (const [at, byte] of changes) if (at < length) damaged[at] = byte;
        const written = writtenPicture(damaged);
        expect(written === null || (written.frame.width > 0 && written.frame.height > 0)).toBe(true);
        expect(written === null || written.sensor === null || written.sensor.width >= written.sensor.height).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
