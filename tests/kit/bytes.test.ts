// Contract of the readers of a file's bytes: numbers by the order that is named, nothing outside, fields and segments as their standards lay
// them out (TIFF 6.0, section 2; ITU-T T.81, B.1.1).
import { describe, expect, test } from 'vitest';
import { bytesFrom } from '../../src/kit/photograph/bytes.ts';
import { byteOrderOf, directoryAt, wholeNumbers, type TaggedField } from '../../src/kit/photograph/directory.ts';
import { exifInJpeg, frameInJpeg, hasProfile, isJpeg } from '../../src/kit/photograph/jpeg.ts';
import { readTiff } from '../../src/kit/photograph/tiff.ts';

const file = Uint8Array.of(9, 1, 2, 3, 4, 5);
const ascii = (text: string): number[] => [...text].map((sign) => sign.charCodeAt(0));

describe('numbers', () => {
  const little = bytesFrom(file, 1, 'little');
  const big = bytesFrom(file, 1, 'big');

  test('are counted from where they begin, in the order that is named', () => {
    expect(little.length).toBe(5);
    expect([little.one(0), little.two(0), little.four(0)]).toEqual([1, 0x0201, 0x04030201]);
    expect([big.one(4), big.two(3), big.four(1)]).toEqual([5, 0x0405, 0x02030405]);
    expect(bytesFrom(Uint8Array.of(255, 255, 255, 255), 0, 'big').four(0)).toBe(0xffffffff);
  });

  test('that lie outside, or partly, are none', () => {
    for (const bytes of [little, big])
      expect([bytes.one(-1), bytes.one(5), bytes.two(4), bytes.two(-1), bytes.four(2), bytes.four(-1)]).toEqual([null, null, null, null, null, null]);
    expect([little.two(3), little.four(1)]).not.toContain(null);
    expect(bytesFrom(file, 9, 'big')).toMatchObject({ length: 0 });
  });
});

const two = (value: number): number[] => [value >> 8, value & 255];
const four = (value: number): number[] => [...two(value >>> 16), ...two(value & 0xffff)];
const field = (tag: number, type: number, count: number, ...value: number[]): number[] => [...two(tag), ...two(type), ...four(count), ...value];
const directory = (next: number, ...fields: number[][]): number[] => [...two(fields.length), ...fields.flat(), ...four(next)];
const bytesOf = (...bytes: number[]) => bytesFrom(Uint8Array.from(bytes), 0, 'big');

describe('a directory', () => {
  test('has its fields, those of four bytes in their place, larger ones where they say', () => {
    const bytes = bytesOf(...directory(77, field(1, 3, 2, 0, 5, 0, 6), field(2, 4, 1, ...four(9)), field(3, 2, 5, ...four(60)), field(4, 5, 1, ...four(70))));
    const found = directoryAt(bytes, 0);
    expect(found?.next).toBe(77);
    expect([...(found?.fields ?? [])]).toEqual([
      [1, { type: 3, count: 2, at: 10 }],
      [2, { type: 4, count: 1, at: 22 }],
      [3, { type: 2, count: 5, at: 60 }],
      [4, { type: 5, count: 1, at: 70 }],
    ]);
  });

  test('leaves out kinds that it does not know, keeps the first of a tag, and may be the last', () => {
    const found = directoryAt(bytesOf(...directory(0, field(1, 7, 1, 0, 0, 0, 0), field(2, 3, 1, 0, 1, 0, 0), field(2, 3, 1, 0, 2, 0, 0))), 0);
    expect([...(found?.fields.keys() ?? [])]).toEqual([2]);
    expect(found?.fields.get(2)?.at).toBe(2 + 12 + 8);
    expect(found?.next).toBeNull();
  });

  test('is read as far as the bytes go, and is none where its count is out of reach', () => {
    const whole = directory(5, field(1, 3, 1, 0, 1, 0, 0), field(2, 3, 1, 0, 2, 0, 0));
    expect([...(directoryAt(bytesOf(...whole.slice(0, 20)), 0)?.fields.keys() ?? [])]).toEqual([1]);
    expect(directoryAt(bytesOf(...whole.slice(0, 28)), 0)?.next).toBeNull();
    expect([directoryAt(bytesOf(1), 0), directoryAt(bytesOf(...whole), null), directoryAt(bytesOf(...whole), 99)]).toEqual([null, null, null]);
  });

  test('of more than a thousand fields is read to the thousandth, and leads to no other', () => {
    const many = (count: number) => directoryAt(bytesOf(...directory(5, ...Array.from({ length: count }, (_, tag) => field(tag, 3, 1, 0, 0, 0, 0)))), 0);
    expect([many(1000)?.fields.size, many(1000)?.next]).toEqual([1000, 5]);
    expect([many(1001)?.fields.size, many(1001)?.next]).toEqual([1000, null]);
  });

  test('has whole numbers of two and four bytes, no more than are asked for', () => {
    const bytes = bytesOf(0, 1, 0, 2, 0, 3);
    const numbers = (type: number, count: number, most: number, at = 0) => wholeNumbers(bytes, { type, count, at }, most);
    expect([numbers(3, 3, 9), numbers(3, 3, 2), numbers(3, 1, 9), numbers(3, 9, 9)]).toEqual([[1, 2, 3], [1, 2], [1], [1, 2, 3]]);
    expect([numbers(4, 1, 1), numbers(13, 1, 1, 2), numbers(4, 2, 2)]).toEqual([[0x10002], [0x20003], [0x10002]]);
    expect([numbers(2, 3, 3), numbers(5, 1, 1), wholeNumbers(bytes, undefined, 3)]).toEqual([[], [], []]);
  });
});

test('which end of a number comes first is written in the first two bytes', () => {
  const order = (text: string) => byteOrderOf(Uint8Array.from([0, ...ascii(text)]), 1);
  expect([order('II'), order('MM'), order('IM'), order('I')]).toEqual(['little', 'big', null, null]);
});

describe('a TIFF header', () => {
  // Its directory lies at 8; what follows lies behind that.
  const header = (fields: number[][], ...behind: number[]) =>
    readTiff(Uint8Array.from([...ascii('MM'), 0, 42, ...four(8), ...directory(0, ...fields), ...behind]), 0);
  const behind = (fields: number): number => 8 + 2 + 12 * fields + 4;
  const textField = (text: string | number[], count?: number) => {
    const signs = typeof text === 'string' ? ascii(text) : text;
    return header([field(1, 2, count ?? signs.length, ...four(behind(1)))], ...signs)?.text(1);
  };

  test('has text up to its first zero, at most 200 signs, its blanks made one', () => {
    expect(textField('Velde\0M1xx')).toBe('Velde');
    expect(textField(' Velde  \t M1 ')).toBe('Velde M1');
    expect(textField('x'.repeat(200))).toBe('x'.repeat(200));
    expect(textField('x'.repeat(201))).toBe('x'.repeat(200));
    expect(textField('Velde', 99)).toBe('Velde');
    expect(textField('\0\0\0\0\0\0')).toBeNull();
    expect(textField([0x43, 0xc3, 0xb6, 0x72, 0x76])).toBe('Cörv');
    expect(textField([0x43, 0xf6, 0x72, 0x76, 0x69])).toBe('Cörvi');
  });

  test('has no text in a field of another kind', () => {
    const fields = header([field(1, 3, 1, 0, 7, 0, 0), field(2, 129, 2, 0x4d, 0x31, 0, 0)]);
    expect([fields?.text(1), fields?.text(2), fields?.text(9)]).toEqual([null, 'M1', null]);
    expect([fields?.whole(1), fields?.whole(2), fields?.whole(9)]).toEqual([7, null, null]);
  });

  test('has up to four fractions, as far as they are in reach', () => {
    const fractions = (count: number, ...values: number[]) => header([field(1, 5, count, ...four(behind(1)))], ...values.flatMap(four))?.fractions(1);
    expect(fractions(1, 85, 10)).toEqual([{ over: 85, under: 10 }]);
    expect(fractions(2, 1, 2, 3)).toEqual([{ over: 1, under: 2 }]);
    expect(fractions(5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10)).toHaveLength(4);
    expect(header([field(1, 3, 1, 0, 7, 0, 0)])?.fractions(1)).toEqual([]);
  });

  test('looks into the directory of the camera first, where a pointer of four bytes leads there', () => {
    const inner = directory(0, field(1, 3, 1, 0, 8, 0, 0));
    const fields = header([field(1, 3, 1, 0, 7, 0, 0), field(2, 3, 1, 0, 9, 0, 0), field(0x8769, 4, 1, ...four(behind(3)))], ...inner);
    expect([fields?.whole(1), fields?.whole(2)]).toEqual([8, 9]);
    expect(header([field(1, 3, 1, 0, 7, 0, 0), field(0x8769, 3, 1, 0, behind(2), 0, 0)], ...inner)?.whole(1)).toBe(7);
  });

  test('is none without its order, or its directory', () => {
    expect(readTiff(Uint8Array.from([...ascii('XX'), 0, 42, ...four(8), ...directory(0)]), 0)).toBeNull();
    expect(readTiff(Uint8Array.from([...ascii('MM'), 0, 42, ...four(99), ...directory(0)]), 0)).toBeNull();
  });
});

describe('a JPEG', () => {
  const segment = (marker: number, ...content: number[]): number[] => [0xff, marker, ...two(content.length + 2), ...content];
  const frame = (marker: number, width = 6000, height = 4000): number[] => segment(marker, 8, ...two(height), ...two(width), 3);
  const jpeg = (...segments: number[][]): Uint8Array => Uint8Array.from([0xff, 0xd8, ...segments.flat()]);
  const EXIF = segment(0xe1, ...ascii('Exif'), 0, 0, 1, 2, 3, 4);
  const size = { width: 6000, height: 4000 };

  test('has the size of its frame: baseline, extended or progressive, not lossless', () => {
    expect([0xc0, 0xc1, 0xc2, 0xc3].map((marker) => frameInJpeg(jpeg(EXIF, frame(marker))))).toEqual([size, size, size, null]);
    expect([frameInJpeg(jpeg(frame(0xc0, 0))), frameInJpeg(jpeg(frame(0xc0, 5, 0))), frameInJpeg(jpeg(frame(0xc0)).subarray(0, 9))]).toEqual([
      null,
      null,
      null,
    ]);
    expect(frameInJpeg(Uint8Array.from([0xff, 0xd9, ...frame(0xc0)]))).toBeNull();
  });

  test('has its camera data behind "Exif" and two zeros, and its profile behind its name', () => {
    expect(exifInJpeg(jpeg(segment(0xe0, 1, 2), EXIF))).toBe(2 + 6 + 4 + 6);
    expect(exifInJpeg(jpeg(segment(0xe1, ...ascii('Exif'), 0, 1), EXIF))).toBe(2 + 10 + 4 + 6);
    expect(exifInJpeg(jpeg(segment(0xe2, ...ascii('Exif'), 0, 0)))).toBeNull();
    expect([hasProfile(jpeg(EXIF, segment(0xe2, ...ascii('ICC_PROFILE'), 0, 1, 1))), hasProfile(jpeg(segment(0xe1, ...ascii('ICC_PROFILE'), 0)))]).toEqual([
      true,
      false,
    ]);
    expect(hasProfile(jpeg(segment(0xe2, ...ascii('ICC_PROFILE'), 1)))).toBe(false);
  });

  test('is looked through to its scan, past bytes that fill up, as far as its lengths are right', () => {
    const scan = segment(0xda, 1);
    expect([frameInJpeg(jpeg(scan, frame(0xc0))), frameInJpeg(jpeg([0xff, 0xff], frame(0xc0)))]).toEqual([null, size]);
    expect(frameInJpeg(jpeg([0xff, 0xe0, 0, 1], frame(0xc0)))).toBeNull();
    expect(frameInJpeg(jpeg([0xff, 0xe0, 0, 2], frame(0xc0)))).toEqual(size);
    expect(frameInJpeg(jpeg([0x00, 0xe0, 0, 2], frame(0xc0)))).toBeNull();
  });

  test('is given up after 256 segments', () => {
    const empty = (count: number) => Array.from({ length: count }, () => segment(0xe0));
    expect([frameInJpeg(jpeg(...empty(255), frame(0xc0))), frameInJpeg(jpeg(...empty(256), frame(0xc0)))]).toEqual([size, null]);
  });

  test('is told by its first two bytes', () => {
    expect([isJpeg(jpeg()), isJpeg(Uint8Array.of(0xff)), isJpeg(Uint8Array.of(0xff, 0xd9))]).toEqual([true, false, false]);
  });
});

test('a field knows nothing of what it means', () => {
  const plain: TaggedField = { type: 3, count: 1, at: 0 };
  expect(wholeNumbers(bytesFrom(file, 0, 'big'), plain, 0)).toEqual([]);
});
