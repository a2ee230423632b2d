// Bytes, directories and the pictures in raw and other files, kept over files that are cut short at each byte.
import { expect, test } from 'vitest';
import { bytesFrom } from '../../../src/kit/photograph/bytes.ts';
import { byteOrderOf, directoryAt, wholeNumbers } from '../../../src/kit/photograph/directory.ts';
import { turnOf } from '../../../src/kit/photograph/orientation.ts';
import { pictureSizeOf } from '../../../src/kit/photograph/pictureSize.ts';
import { largestPreview } from '../../../src/kit/photograph/preview.ts';
import { readTiff } from '../../../src/kit/photograph/tiff.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { tiffFile, VELDE } from '../photographFile.ts';
import { frameOnly, rawFile, type RawPart } from '../rawFile.ts';

import { stretches } from './stretches.ts';

const ORDERS = ['little', 'big'] as const;

test('bytes, one, two and four at a time, round both ends', () => {
  const file = Uint8Array.from([1, 2, 3, 4, 250, 251, 252]);
  const places = [-5, -2, -1, 0, 1, 2, 3, 4, 5, 6, 7, 8];
  expect(
    ORDERS.flatMap((order) =>
      [0, 2, 6, 7, 9]
        .map((from) => bytesFrom(file, from, order))
        .map(({ length, one, two, four }) => oneLine([length, places.flatMap((at) => [one(at), two(at), four(at)])])),
    ),
  ).toMatchSnapshot();
});

test('a directory, its fields and the fields of a header', () => {
  const file = tiffFile(VELDE);
  const bytes = bytesFrom(file, 0, 'big');
  const first = directoryAt(bytes, 8);
  expect([...(first?.fields ?? [])].map(oneLine)).toMatchSnapshot('fields');
  expect([0, 1, 2, 3].map((most) => oneLine(wholeNumbers(bytes, { type: 3, count: 2, at: 0 }, most)))).toMatchSnapshot('numbers');
  expect([2, 3, 4, 5, 13].map((type) => oneLine(wholeNumbers(bytes, { type, count: 3, at: file.length - 9 }, 9)))).toMatchSnapshot('numbers at the end');
  expect([0, 1, 2, file.length - 1, file.length].map((from) => oneLine([byteOrderOf(file, from), readTiff(file, from) === null]))).toMatchSnapshot('order');
  const fields = readTiff(file, 0);
  expect([0x0110, 0x0112, 0x829d, 0xa432, 0x9999].map((tag) => oneLine([fields?.text(tag), fields?.fractions(tag), fields?.whole(tag)]))).toMatchSnapshot(
    'header',
  );
});

test('the picture inside a raw file, from its first byte to its last', () => {
  const small: RawPart = { width: 160, height: 120, by: 'jpeg' };
  const strip: RawPart = { width: 6000, height: 4000, by: 'strip', jpeg: { width: 5400, height: 3600 } };
  const files = ORDERS.flatMap((order) => [
    rawFile({ order, chain: [small, strip], below: [], orientation: 6 }),
    rawFile({ order, chain: [{ ...small, by: 'nothing' }], below: [strip, { ...strip, by: 'two strips' }], orientation: 8 }),
  ]);
  expect(files.map((file) => stretches(file, largestPreview))).toMatchSnapshot('cut');
  const claimed = [5399, 5400, 5999, 6000, 6001].map((width) =>
    rawFile({ order: 'big', chain: [{ width, height: 100, by: 'jpeg', jpeg: { width: 5400, height: 90 } }], below: [] }),
  );
  expect(claimed.map((file) => oneLine(largestPreview(file)))).toMatchSnapshot('claimed');
  const turned = [0, 1, 2, 8, 9].map((orientation) => rawFile({ order: 'big', chain: [small], below: [], orientation }));
  expect(turned.map((file) => oneLine(largestPreview(file)))).toMatchSnapshot('turned');
  const equal = rawFile({ order: 'big', chain: [small, small, { ...small, jpeg: { width: 120, height: 160 } }], below: [] });
  expect(oneLine(largestPreview(equal))).toMatchSnapshot('the first of equals');
});

test('as many directories as any camera writes, and no more', () => {
  const chain = (count: number) => Array.from({ length: count }, (_, at): RawPart => ({ width: 10 + at, height: 10, by: 'jpeg' }));
  const width = (file: Uint8Array) => oneLine(largestPreview(file)).match(/"width":"(\d+)"/)?.[1];
  expect([63, 64, 65, 70].map((count) => width(rawFile({ order: 'little', chain: chain(count), below: [] })))).toEqual(['72', '73', '73', '73']);
  expect([15, 16, 17].map((count) => width(rawFile({ order: 'little', chain: chain(1), below: chain(count) })))).toEqual(['24', '25', '25']);
});

test('the frames of other kinds of picture', () => {
  const webp = (kind: string, ...rest: readonly number[]) =>
    Uint8Array.from(
      [...'RIFF']
        .map((sign) => sign.charCodeAt(0))
        .concat(
          [0, 0, 0, 0],
          [...`WEBP${kind}`].map((sign) => sign.charCodeAt(0)),
          rest,
        ),
    );
  const lossy = webp('VP8 ', 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 0x21, 0xc3, 0x43, 0xc5);
  const lossless = webp('VP8L', 0, 0, 0, 0, 0x2f, 0x21, 0x83, 0xfa, 0x7b);
  const extended = webp('VP8X', 1, 2, 3, 4, 5, 6, 7, 8, 1, 2, 3, 4, 5, 6);
  const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52, 0, 0, 1, 2, 0, 0, 3, 4]);
  expect(
    [
      lossy,
      lossless,
      extended,
      webp('VP8?', 1, 2),
      png,
      png.with(19, 0).with(18, 0),
      png.with(23, 0).with(22, 0),
      png.with(0, 0x88),
      png.with(12, 0x48),
      frameOnly({ width: 300, height: 0 }),
    ].map((file) => stretches(file, pictureSizeOf)),
  ).toMatchSnapshot('sizes');
  expect([0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((orientation) => oneLine(turnOf(orientation, { width: 300, height: 200 })))).toMatchSnapshot('turns');
});

test('a directory that points to itself is read once, so that those behind it are reached', () => {
  const picture = frameOnly({ width: 300, height: 200 });
  const file = new Uint8Array(200 + picture.length);
  const view = new DataView(file.buffer);
  const entry = (at: number, tag: number, count: number, value: number) => {
    view.setUint16(at, tag);
    view.setUint16(at + 2, 4);
    view.setUint32(at + 4, count);
    view.setUint32(at + 8, value);
  };
  file.set([0x4d, 0x4d, 0, 42, 0, 0, 0, 8]);
  // The first has sixteen below it, each of them itself; the second has no fields; the third has the picture.
  view.setUint16(8, 1);
  entry(10, 0x014a, 16, 100);
  view.setUint32(22, 30);
  view.setUint32(32, 40);
  view.setUint16(40, 2);
  entry(42, 0x0201, 1, 200);
  entry(54, 0x0202, 1, picture.length);
  for (let below = 0; below < 16; below += 1) view.setUint32(100 + 4 * below, 8);
  file.set(picture, 200);
  expect(largestPreview(file)).toEqual({ ok: true, value: { from: 200, length: picture.length, frame: { width: 300, height: 200 }, orientation: 1 } });
});
