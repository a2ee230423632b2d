// Contract of opening a picture's file: whatever its bytes are, it leads to what the browser may decode, with facts of the camera that make
// sense, or to one fault; nothing hangs, and nothing is thrown.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { EMPTY_KIT } from '../../src/kit/kit.ts';
import { cameraFacts } from '../../src/photographs/cameraFacts.ts';
import { openPicture } from '../../src/platform/pictures/opened.ts';
import { jpegFile, tiffFile, VELDE } from '../kit/photographFile.ts';
import { rawFile } from '../kit/rawFile.ts';

const FAULTS = ['file unread', 'no picture', 'no picture inside', 'only a small picture inside', 'too large', 'too small'];
const FILES = [
  jpegFile(tiffFile(VELDE)),
  tiffFile({ ...VELDE, order: 'little' }),
  rawFile({ order: 'little', chain: [{ width: 6000, height: 4000, by: 'jpeg' }], below: [{ width: 160, height: 120, by: 'jpeg' }], orientation: 6 }),
];
const byte = fc.oneof(fc.constantFrom(0, 1, 8, 0x7f, 0x80, 0xfe, 0xff), fc.nat(255));
const changes = fc.array(fc.tuple(fc.nat(900), byte), { minLength: 1, maxLength: 12 });

test('ten thousand damaged picture files are each opened or refused with one fault', { timeout: 120_000 }, async () => {
  let opened = 0;
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...FILES), changes, fc.option(fc.nat(900)), async (file, bytes, cut) => {
      const damaged = Uint8Array.from(file);
      for (const [at, value] of bytes) damaged[at % damaged.length] = value;
      const whole = damaged.subarray(0, cut ?? damaged.length);
      const picture = await openPicture(new Blob([whole]), 0);
      expect(picture.ok || FAULTS.includes(picture.fault)).toBe(true);
      if (!picture.ok) return;
      opened++;
      const { blob, orientation, camera, written } = picture.value;
      expect(blob.size).toBeLessThanOrEqual(whole.length);
      expect(orientation >= 1 && orientation <= 8).toBe(true);
      const { focalLength, aperture } = cameraFacts(camera, written, EMPTY_KIT, null);
      expect([focalLength ?? 50, aperture ?? 2].every((value) => Number.isFinite(value) && value > 0)).toBe(true);
    }),
    { numRuns: 10_000 },
  );
  expect(opened).toBeGreaterThan(1000);
});

test('a file that is gone when it is read says so', async () => {
  const gone = { slice: () => ({ arrayBuffer: () => Promise.reject(new Error('The file is gone.')) }) } as unknown as Blob;
  expect(await openPicture(gone, 0)).toEqual({ ok: false, fault: 'file unread' });
});
