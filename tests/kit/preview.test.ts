import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestPreview } from '../../src/kit/photograph/preview.ts';
import { frameOnly, rawFile, type RawPart, type RawParts } from './rawFile.ts';

const SMALL: RawPart = { width: 160, height: 120, by: 'jpeg' };
const WHOLE: RawPart = { width: 6000, height: 4000, by: 'jpeg' };
const SENSOR: RawPart = { width: 6080, height: 4044, by: 'strip', jpeg: { width: 6080, height: 4044, lossless: true } };

const found = (parts: Omit<RawParts, 'order'>, order: RawParts['order'] = 'little') => largestPreview(rawFile({ ...parts, order }));
const fault = (parts: Omit<RawParts, 'order'>) => {
  const preview = found(parts);
  return preview.ok ? null : preview.fault;
};

describe('the picture inside a raw file', () => {
  it('is the largest JPEG of all directories, in the chain or below it, in either byte order', () => {
    const wanted = { ok: true, value: { frame: { width: 6000, height: 4000 }, orientation: 1 } };
    for (const order of ['little', 'big'] as const) {
      expect(found({ chain: [SMALL, WHOLE], below: [SENSOR] }, order)).toMatchObject(wanted);
      expect(found({ chain: [SMALL], below: [SENSOR, WHOLE] }, order)).toMatchObject(wanted);
      expect(found({ chain: [{ ...WHOLE, by: 'strip' }, SMALL], below: [] }, order)).toMatchObject(wanted);
    }
  });

  it('is told by the bytes it takes of the file', () => {
    const file = rawFile({ order: 'big', chain: [SMALL, WHOLE], below: [SENSOR] });
    const preview = largestPreview(file);
    if (!preview.ok) throw new Error(preview.fault);
    const { from, length } = preview.value;
    expect(file.subarray(from, from + length)).toEqual(frameOnly(WHOLE));
  });

  it('keeps how the camera was held, which its own JPEG need not say', () => {
    expect(found({ chain: [SMALL, WHOLE], below: [], orientation: 6 })).toMatchObject({ ok: true, value: { orientation: 6 } });
    expect(found({ chain: [SMALL, WHOLE], below: [], orientation: 77 })).toMatchObject({ ok: true, value: { orientation: 1 } });
  });

  it('that is no more than a small one, in two strips or of raw data is none, and why is said', () => {
    expect(fault({ chain: [SMALL], below: [SENSOR] })).toBe('only a small picture inside');
    expect(fault({ chain: [{ ...WHOLE, by: 'two strips' }], below: [SENSOR] })).toBe('no picture inside');
    expect(fault({ chain: [{ ...WHOLE, by: 'nothing' }], below: [] })).toBe('no picture inside');
    expect(largestPreview(frameOnly(WHOLE))).toEqual({ ok: false, fault: 'no raw file' });
    expect(largestPreview(new Uint8Array())).toEqual({ ok: false, fault: 'no raw file' });
  });
});

describe('ten thousand damaged raw files', { timeout: 60_000 }, () => {
  const files = [
    rawFile({ order: 'little', chain: [SMALL, WHOLE], below: [SENSOR, SMALL] }),
    rawFile({ order: 'big', chain: [{ ...WHOLE, by: 'strip' }, SMALL], below: [SENSOR] }),
  ];
  const byte = fc.oneof(fc.constantFrom(0, 1, 8, 0x7f, 0x80, 0xfe, 0xff), fc.nat(255));
  const changes = fc.array(fc.tuple(fc.nat(700), byte), { minLength: 1, maxLength: 12 });

  it('end at once, and a picture that is found lies inside the file', () => {
    let readable = 0;
    fc.assert(
      fc.property(fc.constantFrom(...files), changes, fc.option(fc.nat(700)), (file, bytes, cut) => {
        const damaged = Uint8Array.from(file);
        for (const [at, value] of bytes) damaged[at % damaged.length] = value;
        const whole = damaged.subarray(0, cut ?? damaged.length);
        const preview = largestPreview(whole);
        if (!preview.ok) return;
        readable++;
        const { from, length, frame, orientation } = preview.value;
        expect(from + length).toBeLessThanOrEqual(whole.length);
        expect(Math.min(from, length, frame.width, frame.height, orientation)).toBeGreaterThanOrEqual(from === 0 ? 0 : 1);
      }),
      { numRuns: 10_000 },
    );
    expect(readable).toBeGreaterThan(1000);
  });

  it('whose directories point to one another end at once', () => {
    const loop = rawFile({ order: 'little', chain: [WHOLE], below: [SMALL] });
    new DataView(loop.buffer).setUint32(8 + 2 + 12 * 6, 8, true);
    expect(largestPreview(loop).ok).toBe(true);
  });
});
