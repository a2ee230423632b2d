// Contract of reading a focal length out of a lens's name: it is right or it is not given at all.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { focalInName } from '../../src/kit/focalInName.ts';

test.each([
  ['Corvid 85 f/1.8', 85, 85],
  ['Corvid 85mm f/1.8', 85, 85],
  ['corvid 50', 50, 50],
  ['Corvid AX 24-70 f/4', 24, 70],
  ['Corvid 24\u201370mm 1:2.8', 24, 70],
  ['Corvid 70 to 200', 70, 200],
  ['Corvid 100-400 f/4.5-5.6', 100, 400],
  ['Corvid 8-16mm F4.5-5.6 II', 8, 16],
  ['Corvid 85 1,8', 85, 85],
  ['Corvid 10.5 f/2.8', 10.5, 10.5],
  ['Corvid 135 f2', 135, 135],
  ['135', 135, 135],
  ['Orrin 300 f/4 with 1.4x', 300, 300],
  ['The long one', null, null],
  ['Corvid f/1.8', null, null],
  ['Corvid Mk2', null, null],
  ['Corvid 85 no. 1187', null, null],
  ['Corvid 85mm no. 1187', 85, 85],
  ['Corvid 70-24', null, null],
  ['', null, null],
])('“%s” is called by %s to %s', (name, from, to) => {
  expect(focalInName(name)).toEqual(from === null ? null : { from, to });
});

test('any whole focal length between a word and an f-number is found', () => {
  fc.assert(
    fc.property(fc.integer({ min: 8, max: 800 }), fc.double({ min: 0.9, max: 8, noNaN: true }), (length, aperture) => {
      expect(focalInName(`Corvid ${length} f/${aperture.toFixed(1)}`)).toEqual({ from: length, to: length });
    }),
  );
});

test('whatever the name, what is read out of it is a focal length or none', () => {
  fc.assert(
    fc.property(fc.string(), (name) => {
      const found = focalInName(name);
      expect(found === null || (found.from >= 4 && found.from <= found.to && found.to <= 2000)).toBe(true);
    }),
  );
});
