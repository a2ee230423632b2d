import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pictureSizeOf } from '../../src/kit/photograph/pictureSize.ts';
import { jpegFile, tiffFile, VELDE } from './photographFile.ts';
import { frameOnly } from './rawFile.ts';

const ascii = (text: string): number[] => [...new TextEncoder().encode(text)];
const png = (width: number, height: number): Uint8Array => {
  const file = new Uint8Array(33);
  file.set([0x89, ...ascii('PNG'), 13, 10, 26, 10, 0, 0, 0, 13, ...ascii('IHDR')]);
  new DataView(file.buffer).setUint32(16, width);
  new DataView(file.buffer).setUint32(20, height);
  return file;
};
const webp = (kind: string, ...chunk: number[]): Uint8Array =>
  Uint8Array.from([...ascii('RIFF'), 0, 0, 0, 0, ...ascii('WEBP'), ...ascii(kind), 0, 0, 0, 0, ...chunk]);

it('the size of a picture is told by its first bytes, for each kind of file', () => {
  expect(pictureSizeOf(frameOnly({ width: 6000, height: 4000 }))).toEqual({ width: 6000, height: 4000 });
  expect(pictureSizeOf(png(20_000, 10_000))).toEqual({ width: 20_000, height: 10_000 });
  // RFC 9649: a key frame's 14 bits of each side; both sides less one in 14 bits; both less one in three bytes.
  expect(pictureSizeOf(webp('VP8 ', 0, 0, 0, 0x9d, 0x01, 0x2a, 0x40, 0x41, 0xf0, 0x00))).toEqual({ width: 320, height: 240 });
  expect(pictureSizeOf(webp('VP8L', 0x2f, 0x3f, 0xc1, 0x3b, 0x00))).toEqual({ width: 320, height: 240 });
  expect(pictureSizeOf(webp('VP8X', 0, 0, 0, 0, 0x3f, 1, 0, 0xef, 0, 0))).toEqual({ width: 320, height: 240 });
});

it('a file of another kind, without a frame, cut short or of no size has none', () => {
  const jpeg = jpegFile(tiffFile(VELDE));
  for (const file of [jpeg, png(0, 10), png(10, 10).subarray(0, 20), webp('VP8 '), webp('ANIM', 1, 2, 3), new Uint8Array(), tiffFile(VELDE)])
    expect(pictureSizeOf(file)).toBeNull();
});

it('ten thousand files of chance behind a true beginning have a whole size or none', { timeout: 60_000 }, () => {
  const start = fc.constantFrom([...frameOnly({ width: 6000, height: 4000 })], [...png(300, 200)], [...webp('VP8X', 0, 0, 0, 0, 0x3f, 1, 0, 0xef, 0, 0)]);
  let sized = 0;
  fc.assert(
    fc.property(start, fc.array(fc.tuple(fc.nat(60), fc.nat(255)), { maxLength: 8 }), (head, changes) => {
      const file = Uint8Array.from(head);
      for (const [at, value] of changes) file[at % file.length] = value;
      const frame = pictureSizeOf(file);
      if (frame !== null) sized++;
      const { width, height } = frame ?? { width: 1, height: 1 };
      expect(Number.isInteger(width) && Number.isInteger(height) && width > 0 && height > 0).toBe(true);
    }),
    { numRuns: 10_000 },
  );
  expect(sized).toBeGreaterThan(1000);
});
