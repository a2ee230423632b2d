// The reader of photographs, held against a well-kept library on files with any values: exifreader (M. Wallander).
import ExifReader from 'exifreader';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fNumberOf } from '../../src/kit/photograph/apex.ts';
import { readPhotograph } from '../../src/kit/photograph/photograph.ts';
import { jpegFile, tiffFile, type FileParts } from '../kit/photographFile.ts';

const name = fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9 ./-]{0,38}[A-Za-z0-9]$/).filter((text) => !/ {2}/.test(text));
const fraction = (most: number) => fc.tuple(fc.integer({ min: 1, max: most * 100 }), fc.constantFrom(1, 10, 100));
const two = (value: number) => String(value).padStart(2, '0');
const date = fc
  .tuple(fc.integer({ min: 1990, max: 2090 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }), fc.nat(23), fc.nat(59))
  .map(([year, month, day, hour, minute]) => `${year}:${two(month)}:${two(day)} ${two(hour)}:${two(minute)}:07`);

const parts = fc
  .record({
    order: fc.constantFrom('little' as const, 'big' as const),
    model: name,
    body: name,
    lens: name,
    serial: name,
    date,
    focal: fraction(10),
    fNumber: fraction(1),
    apex: fraction(1),
    distance: fraction(20),
  })
  .map(({ order, model, body, lens, serial, date: taken, focal, fNumber, apex, distance }): FileParts => ({
    order,
    first: [{ tag: 0x0110, value: { text: model } }],
    exif: [
      { tag: 0x829d, value: { fractions: [fNumber] } },
      { tag: 0x9003, value: { text: taken } },
      { tag: 0x9205, value: { fractions: [apex] } },
      { tag: 0x9206, value: { fractions: [distance] } },
      { tag: 0x920a, value: { fractions: [focal] } },
      { tag: 0xa431, value: { text: body } },
      { tag: 0xa434, value: { text: lens } },
      { tag: 0xa435, value: { text: serial } },
    ],
  }));

describe('reading photographs', { timeout: 60_000 }, () => {
  it('finds what exifreader finds, in JPEG and TIFF, in either byte order', () => {
    fc.assert(
      fc.property(parts, fc.boolean(), (file, jpeg) => {
        const bytes = jpeg ? jpegFile(tiffFile(file)) : tiffFile(file);
        const own = readPhotograph(bytes, 0);
        if (!own.ok) throw new Error(own.fault);
        const tags = ExifReader.load(bytes.buffer as ArrayBuffer);
        const text = (tag: { value: unknown } | undefined) => String([tag?.value].flat()[0]);
        const number = (tag: { value: unknown } | undefined) => {
          const [over, under] = (tag ?? { value: [NaN, 1] }).value as [number, number];
          return over / under;
        };
        const within = (value: number, least: number, most: number) => (value < least || value > most ? null : value);
        const tenth = (value: number | null) => (value === null ? null : Math.round(value * 10) / 10);
        const taken = /(\d+):(\d+):(\d+) (\d+):(\d+):(\d+)/.exec(text(tags.DateTimeOriginal))!.slice(1).map(Number);
        expect(own.value).toMatchObject({
          bodyModel: text(tags.Model),
          bodySerial: text(tags['BodySerialNumber']),
          lensModel: text(tags.LensModel),
          lensSerial: text(tags['LensSerialNumber']),
          focalLength: within(tenth(number(tags.FocalLength))!, 4, 2000),
          aperture: tenth(within(number(tags.FNumber), 0.5, 64)),
          widest: tenth(within(fNumberOf(number(tags.MaxApertureValue)), 0.5, 64)),
          distance: within(tenth(number(tags.SubjectDistance) * 1000)!, 50, 500_000),
          taken: Date.UTC(taken[0]!, taken[1]! - 1, taken[2], taken[3], taken[4], taken[5]),
        });
      }),
      { numRuns: 500 },
    );
  });
});
