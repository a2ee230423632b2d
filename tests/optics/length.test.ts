import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDistance, readFocalLength, writeDistance } from '../../src/optics/length.ts';
import { millimetres as mm } from '../../src/units.ts';
import { said, value } from './value.ts';

describe('distances as people write them', () => {
  it.each([
    ['1.75', 1750],
    ['1,75 m', 1750],
    ['175 cm', 1750],
    ['1750mm', 1750],
    ['5 ft', 1524],
    ['5\' 9"', 1752.6],
    ['5 ft 9 in', 1752.6],
    ['5\u2032 9\u2033', 1752.6],
    ['69 inches', 1752.6],
  ])('"%s" is %d mm where metres are in use', (text, expected) => {
    expect(value(readDistance(text, 'm'))).toBeCloseTo(expected, 6);
  });

  it('a bare number is in the unit in use', () => {
    expect(value(readDistance('5.74', 'ft'))).toBeCloseTo(1749.55, 2);
  });

  it('35 mm times fifty prints as 1.75 m and 5.74 ft (common practice)', () => {
    expect(writeDistance(mm(1750), 'm')).toBe('1.75 m');
    expect(writeDistance(mm(1750), 'ft')).toBe('5.74 ft');
  });

  it('what is written is read back to the digits shown, in both units', () => {
    fc.assert(
      fc.property(fc.double({ min: 200, max: 30_000, noNaN: true }), fc.constantFrom('m', 'ft'), (distance, unit) => {
        const back = value(readDistance(writeDistance(mm(distance), unit), unit));
        // Half a hundredth below ten, half a tenth above.
        expect(Math.abs(back - distance)).toBeLessThan(distance < (unit === 'm' ? 10_000 : 3048) ? 5.1 : 51);
      }),
    );
  });

  it.each([
    ['', 'm', 'Write the distance in metres, such as 1.75.'],
    ['far', 'ft', 'Write the distance in feet, such as 5.74.'],
    ['1750', 'm', 'Enter the distance in metres, from 0.05 to 500.'],
    ['0', 'ft', 'Enter the distance in feet, from 0.17 to 1640.'],
  ] as const)('"%s" in %s is answered with what to do', (text, unit, sentence) => {
    expect(said(readDistance(text, unit))).toBe(sentence);
  });
});

describe('focal lengths', () => {
  it.each([
    ['85', 85],
    ['85 mm', 85],
    ['16,5', 16.5],
  ])('"%s" is %d mm', (text, expected) => expect(value(readFocalLength(text))).toBe(expected));

  it.each([
    ['0.085', '0.085 looks like metres: write the focal length in millimetres, here 85.'],
    ['0.085 m', 'Write the focal length in millimetres: 0.085 m is 85.'],
    ['8.5cm', 'Write the focal length in millimetres: 8.5 cm is 85.'],
    ['0', 'Enter the focal length in millimetres, from 4 to 2000.'],
    ['wide', 'Write the focal length in millimetres, such as 85.'],
  ])('"%s" is answered with what to do', (text, sentence) => expect(said(readFocalLength(text))).toBe(sentence));
});
