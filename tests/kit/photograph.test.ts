import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newBody, newLens } from '../../src/kit/kit.ts';
import { offersOf, takenWith } from '../../src/kit/photograph/offers.ts';
import { FIRST_BYTES, readPhotograph } from '../../src/kit/photograph/photograph.ts';
import { moment } from '../../src/units.ts';
import { jpegFile, tiffFile, VELDE, veldeWith, type FileParts, type Tagged } from './photographFile.ts';

const VELDE_TELLS = {
  bodyModel: 'Velde M1',
  bodySerial: '004711',
  lensModel: 'Orrin 85mm f/1.8',
  lensSerial: 'A12',
  focalLength: 85,
  aperture: 1.8,
  widest: 1.8,
  lensFocal: { from: 85, to: 85 },
  lensWidest: { from: 1.8, to: 1.8 },
  distance: 4250,
  taken: Date.UTC(2026, 2, 4, 17, 6, 7),
};

const read = (parts: FileParts, east = 0) => {
  const photograph = readPhotograph(jpegFile(tiffFile(parts)), east);
  if (!photograph.ok) throw new Error(photograph.fault);
  return photograph.value;
};

describe('a photograph', () => {
  it('tells body, lens, serials, focal length, aperture, distance and date, in either byte order', () => {
    expect(read(VELDE)).toEqual(VELDE_TELLS);
    expect(read({ ...VELDE, order: 'little' })).toEqual(VELDE_TELLS);
  });

  it('tells the same as a TIFF-based raw, also one with another number in place of 42', () => {
    const raw = tiffFile(VELDE);
    expect(readPhotograph(raw, 0)).toEqual({ ok: true, value: VELDE_TELLS });
    raw[3] = 0x55;
    expect(readPhotograph(raw, 0)).toEqual({ ok: true, value: VELDE_TELLS });
  });

  it('is dated by its own zone, else by the zone it is read in', () => {
    expect(read(VELDE, 120).taken).toBe(Date.UTC(2026, 2, 4, 15, 6, 7));
    expect(read(veldeWith({ tag: 0x9011, value: { text: '-05:30' } }), 120).taken).toBe(Date.UTC(2026, 2, 4, 22, 36, 7));
  });

  it('leaves a field empty where the camera wrote nothing sensible', () => {
    const odd: [Tagged, object][] = [
      [{ tag: 0x9206, value: { fractions: [[0xffffffff, 1]] } }, { distance: null }],
      [{ tag: 0x9206, value: { fractions: [[0, 1]] } }, { distance: null }],
      [{ tag: 0x9206, value: { fractions: [[1, 0]] } }, { distance: null }],
      [{ tag: 0x920a, value: { fractions: [[9000, 1]] } }, { focalLength: null }],
      [{ tag: 0x920a, value: { short: 85 } }, { focalLength: null }],
      [
        {
          tag: 0xa432,
          value: {
            fractions: [
              [24, 1],
              [70, 1],
              [0, 0],
              [0, 0],
            ],
          },
        },
        { lensFocal: { from: 24, to: 70 }, lensWidest: null },
      ],
      [
        {
          tag: 0xa432,
          value: {
            fractions: [
              [70, 1],
              [24, 1],
            ],
          },
        },
        { lensFocal: null, lensWidest: null },
      ],
      [{ tag: 0xa431, value: { text: '   ' } }, { bodySerial: null }],
      [{ tag: 0x9003, value: { text: '    :  :     :  :  ' } }, { taken: null }],
      [{ tag: 0x9003, value: { text: '2026:02:30 10:00:00' } }, { taken: null }],
      [{ tag: 0xa434, value: { text: 'Orrin\u0007 \u202e85\u0000<script>' } }, { lensModel: 'Orrin 85' }],
      [{ tag: 0xa434, value: { text: 'x'.repeat(5000) } }, { lensModel: 'x'.repeat(60) }],
      [{ tag: 0xa434, value: { text: 'Örrin 85' } }, { lensModel: 'Örrin 85' }],
    ];
    for (const [field, told] of odd) expect(read(veldeWith(field))).toMatchObject(told);
  });

  it('that cannot be read is refused, and why is said', () => {
    const jpeg = jpegFile(tiffFile(VELDE));
    const fault = (file: Uint8Array) => {
      const photograph = readPhotograph(file, 0);
      return photograph.ok ? null : photograph.fault;
    };
    expect(fault(new Uint8Array())).toBe('no photograph');
    expect(fault(new TextEncoder().encode('II am a letter, not a photograph'))).toBe('no photograph');
    expect(fault(jpegFile(new Uint8Array()))).toBe('no camera data');
    expect(fault(Uint8Array.from([0xff, 0xd8, 0xff, 0xd9]))).toBe('no camera data');
    expect(fault(jpeg.subarray(0, 60))).toBe('camera data unread');
    expect(fault(jpegFile(tiffFile({ order: 'big', first: [], exif: [] })))).toBe('camera data unread');
  });

  it('is read as far as it goes when it is cut short anywhere', () => {
    const jpeg = jpegFile(tiffFile(VELDE));
    for (let length = 0; length <= jpeg.length; length++) {
      const photograph = readPhotograph(jpeg.subarray(0, length), 0);
      const told = photograph.ok ? photograph.value : {};
      for (const [field, value] of Object.entries(told)) {
        const whole = VELDE_TELLS[field as keyof typeof VELDE_TELLS];
        const begun = typeof value === 'string' && String(whole).startsWith(value);
        expect(value === null || begun || JSON.stringify(value) === JSON.stringify(whole) || field === 'taken').toBe(true);
      }
    }
  });

  it('of any size costs only its first part', () => {
    const jpeg = jpegFile(tiffFile(VELDE));
    const reads: number[] = [];
    const counting = new Proxy(new Uint8Array(FIRST_BYTES), {
      get: (target, at) => {
        const index = typeof at === 'string' ? Number(at) : NaN;
        if (Number.isInteger(index)) reads.push(index);
        if (at === 'subarray') return () => counting;
        return Number.isInteger(index) ? (jpeg[index] ?? 0) : Reflect.get(target, at, target);
      },
    });
    expect(readPhotograph(counting, 0).ok).toBe(true);
    expect(reads.length).toBeLessThan(2000);
    expect(Math.max(...reads)).toBeLessThan(jpeg.length);
  });
});

describe('ten thousand damaged photographs', { timeout: 60_000 }, () => {
  const files = [jpegFile(tiffFile(VELDE)), tiffFile(VELDE), tiffFile({ ...VELDE, order: 'little' })];
  const byte = fc.oneof(fc.constantFrom(0, 1, 0x7f, 0x80, 0xfe, 0xff), fc.nat(255));
  const changes = fc.array(fc.tuple(fc.nat(700), byte), { minLength: 1, maxLength: 12 });

  it('are read or refused, and what is read fits the kit', () => {
    let readable = 0;
    fc.assert(
      fc.property(fc.constantFrom(...files), changes, fc.option(fc.nat(700)), (file, bytes, cut) => {
        const damaged = Uint8Array.from(file);
        for (const [at, value] of bytes) damaged[at % damaged.length] = value;
        const photograph = readPhotograph(damaged.subarray(0, cut ?? damaged.length), 0);
        if (!photograph.ok) return;
        readable++;
        const { bodyModel, focalLength, distance, aperture, taken } = photograph.value;
        expect(bodyModel ?? 'x').toMatch(/^[^\p{C}]{1,60}$/u);
        expect([focalLength ?? 50, distance ?? 50, aperture ?? 1, taken ?? 0].every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
        expect(focalLength ?? 50).toBeLessThanOrEqual(2000);
      }),
      { numRuns: 9000 },
    );
    expect(readable).toBeGreaterThan(1000);
  });

  it('of nothing but chance behind a true beginning are read or refused', () => {
    const start = fc.constantFrom([0xff, 0xd8, 0xff, 0xe1], [0x49, 0x49, 42, 0, 8, 0, 0, 0], [0x4d, 0x4d, 0, 42, 0, 0, 0, 8]);
    fc.assert(
      fc.property(start, fc.uint8Array({ maxLength: 400 }), (head, tail) => {
        const photograph = readPhotograph(Uint8Array.from([...head, ...tail]), 0);
        expect(photograph.ok || photograph.fault).toBeTruthy();
      }),
      { numRuns: 1000 },
    );
  });

  it('whose directory points to itself, or claims more than the file holds, end at once', () => {
    const loop = tiffFile({ order: 'little', first: [], exif: [] });
    loop.set([8, 0, 0, 0], 18);
    expect(readPhotograph(loop, 0).ok).toBe(false);
    const greedy = tiffFile(VELDE);
    greedy.set([0xff, 0xff], 8);
    expect(readPhotograph(greedy, 0).ok).toBe(true);
  });
});

describe('what a photograph offers the kit', () => {
  const photograph = read(VELDE);

  it('is one offer a field', () => {
    expect(offersOf(photograph).map(({ to, field }) => `${to} ${field}`)).toEqual([
      'body model',
      'body serial',
      'lens model',
      'lens serial',
      'lens focal',
      'lens widest',
      'situation focalLength',
      'situation distance',
    ]);
    expect(offersOf({ ...photograph, bodySerial: null, distance: null })).toHaveLength(6);
  });

  it('is tied to the body and lens that took it: by serial first, by model where only one can be meant', () => {
    const lens = (id: string, model: string | null, serial: string | null) => ({
      ...newLens(id, id, moment(0)),
      model,
      serial,
    });
    const body = { ...newBody('b', 'Old one', moment(0)), model: 'Velde M1' };
    const kit = (...lenses: ReturnType<typeof lens>[]) => ({ bodies: [body], lenses, converters: [], situations: [] });
    const taken = (...lenses: ReturnType<typeof lens>[]) => takenWith(photograph, kit(...lenses));
    const model = 'Orrin 85mm f/1.8';
    expect(taken(lens('one', model, 'A11'), lens('two', model, 'A12')).lens?.id).toBe('two');
    expect(taken(lens('one', model, null)).lens?.id).toBe('one');
    expect(taken(lens('one', model, null), lens('two', model, null)).lens).toBeNull();
    expect(taken(lens('one', model, 'A11')).lens).toBeNull();
    expect(taken().body?.id).toBe('b');
  });
});
