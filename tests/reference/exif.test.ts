// Apertures in photographs, against CIPA DC-008 (Exif 2.32), annex on APEX units.
import { describe, expect, it } from 'vitest';
import { apexOf, fNumberOf } from '../../src/kit/photograph/apex.ts';
import { readPhotograph } from '../../src/kit/photograph/photograph.ts';
import { TAG } from '../../src/kit/photograph/tags.ts';
import { jpegFile, tiffFile, veldeWith } from '../kit/photographFile.ts';

describe('CIPA DC-008, APEX', () => {
  // X1, derived from the annex, formula from memory: Av = 2 log2 N.
  it.each([
    [1.4, 0.9709],
    [1.8, 1.696],
    [2, 2],
    [2.8, 2.9709],
    [4, 4],
    [5.6, 4.9709],
  ])('f/%f is %f in APEX', (n, av) => {
    expect(Math.abs(apexOf(n) - av)).toBeLessThanOrEqual(0.0001);
  });

  // X2, derived from the annex as printed: N = 2^(Av/2).
  it.each([
    [0.9709, '1.4'],
    [1, '1.4142'],
    [3, '2.8284'],
    [4.9709, '5.6'],
  ])('%f in APEX is f/%s', (av, n) => {
    expect(Math.abs(fNumberOf(av) - Number(n))).toBeLessThanOrEqual(0.001);
  });

  it.each([
    [9709, 1.4],
    [16960, 1.8],
    [20000, 2],
    [29709, 2.8],
    [40000, 4],
    [49709, 5.6],
  ])('%i/10000 in a file is read as f/%f', (av, n) => {
    const file = jpegFile(tiffFile(veldeWith({ tag: TAG.maxApertureValue, value: { fractions: [[av, 10000]] } })));
    expect(readPhotograph(file, 0)).toMatchObject({ ok: true, value: { widest: n } });
  });
});

describe('CIPA DC-008, tag numbers', () => {
  // Tables 'Exif IFD attribute information' and 'TIFF attribute information'; numbers from memory.
  it.each([
    ['model', 272],
    ['dateTime', 306],
    ['exifPointer', 34665],
    ['fNumber', 33437],
    ['dateTimeOriginal', 36867],
    ['offsetTimeOriginal', 36881],
    ['maxApertureValue', 37381],
    ['subjectDistance', 37382],
    ['focalLength', 37386],
    ['pixelWidth', 40962],
    ['pixelHeight', 40963],
    ['densityAcross', 41486],
    ['densityDown', 41487],
    ['densityUnit', 41488],
    ['bodySerialNumber', 42033],
    ['lensSpecification', 42034],
    ['lensModel', 42036],
    ['lensSerialNumber', 42037],
  ] as const)('%s is %i', (name, number) => {
    expect(TAG[name]).toBe(number);
  });
});
