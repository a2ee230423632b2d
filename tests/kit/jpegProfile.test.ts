import { expect, test } from 'vitest';
import { hasProfile } from '../../src/kit/photograph/jpeg.ts';
import { jpegFile, tiffFile, VELDE } from './photographFile.ts';

const SEGMENT = [0xff, 0xe2, 0, 16, ...[...'ICC_PROFILE'].map((sign) => sign.codePointAt(0)!), 0, 1, 1];

test('a colour profile before the picture is seen, wherever it stands among the segments, and no other segment is taken for one', () => {
  const plain = jpegFile(tiffFile(VELDE));
  expect(hasProfile(plain)).toBe(false);
  expect(hasProfile(Uint8Array.from([...plain.subarray(0, 2), ...SEGMENT, ...plain.subarray(2)]))).toBe(true);
  expect(hasProfile(Uint8Array.from([...plain.subarray(0, 2), ...SEGMENT.with(4, 0), ...plain.subarray(2)]))).toBe(false);
  expect(hasProfile(Uint8Array.from([...plain.subarray(0, 2), ...SEGMENT]).subarray(0, 12))).toBe(false);
  expect(hasProfile(new Uint8Array())).toBe(false);
});
