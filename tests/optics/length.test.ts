import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDistance, readFocalLength } from '../../src/optics/length.ts';
import { millimetres as mm } from '../../src/units.ts';
import { write } from '../../src/words/en/write.ts';
import { fault, value } from './value.ts';

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
    ['5 pi 9 po', 1752.6],
    ['5 pieds 9 pouces', 1752.6],
    ['1 pied', 304.8],
    ['5 Fuß 9 Zoll', 1752.6],
    ['5 pies 9 pulgadas', 1752.6],
    ['5 pies 9 pulg.', 1752.6],
    ['5フィート9インチ', 1752.6],
    ['５フィート', 1524],
    ['1.75メートル', 1750],
    ['１７５０ミリ', 1750],
    ['175センチ', 1750],
    ['４．２５ｍ', 4250],
    ['1,75 mètre', 1750],
    ['175 centímetros', 1750],
    ['175 Zentimeter', 1750],
    ['4.25 m', 4250],
    ['4,25', 4250],
    ['4,25m', 4250],
    ['4.25 metres', 4250],
    ['1,000', 1000],
    ['1,000 mm', 1000],
    ['1 000 mm', 1000],
    ['1\u202f000 mm', 1000],
    ['12,500 mm', 12_500],
    ['1,234.5 mm', 1234.5],
    ['1.234,5 mm', 1234.5],
    ['0,250', 250],
    ['.5', 500],
    ['2.', 2000],
    ['1,500 cm', 15_000],
    ['1 m 75 cm', 1750],
    ['1 m 75', 1750],
    ['5 ft 9', 1752.6],
    ['5 ft. 9 in.', 1752.6],
    ['5\u20199\u201d', 1752.6],
    ["5'9''", 1752.6],
    ['5 feet 9.5 inches', 1765.3],
  ])('"%s" is %d mm where metres are in use', (text, expected) => {
    expect(value(readDistance(text, 'm'))).toBeCloseTo(expected, 6);
  });

  it('a bare number is in the unit in use', () => {
    expect(value(readDistance('5.74', 'ft'))).toBeCloseTo(1749.55, 2);
  });

  it('35 mm times fifty prints as 1.75 m and 5.74 ft (common practice)', () => {
    expect(write.distance(mm(1750), 'm')).toBe('1.75\u00a0m');
    expect(write.distance(mm(1750), 'ft')).toBe('5.74\u00a0ft');
  });

  it('what is written is read back to the digits shown, in both units', () => {
    fc.assert(
      fc.property(fc.double({ min: 200, max: 30_000, noNaN: true }), fc.constantFrom('m', 'ft'), (distance, unit) => {
        const back = value(readDistance(write.distance(mm(distance), unit), unit));
        // Half a hundredth below ten, half a tenth above.
        expect(Math.abs(back - distance)).toBeLessThan(distance < (unit === 'm' ? 10_000 : 3048) ? 5.1 : 51);
      }),
    );
  });

  it.each([
    ['', 'm', { is: 'distance unread', unit: 'm' }],
    ['far', 'ft', { is: 'distance unread', unit: 'ft' }],
    ['1750', 'm', { is: 'distance out of range', unit: 'm' }],
    ['0', 'ft', { is: 'distance out of range', unit: 'ft' }],
    ['-2', 'm', { is: 'distance unread', unit: 'm' }],
    ['2 3', 'm', { is: 'distance unread', unit: 'm' }],
    ['5 in 9 ft', 'ft', { is: 'distance unread', unit: 'ft' }],
    ['1,2,3 m', 'm', { is: 'distance unread', unit: 'm' }],
    ['12,34,567', 'm', { is: 'distance unread', unit: 'm' }],
    ['1,250 ft', 'm', { is: 'two lengths', text: '1,250 ft', one: [{ value: 1.25, unit: 'ft' }], other: [{ value: 1250, unit: 'ft' }] }],
    ['1,250', 'ft', { is: 'two lengths', text: '1,250', one: [{ value: 1.25, unit: 'ft' }], other: [{ value: 1250, unit: 'ft' }] }],
    ['50,000 mm', 'm', { is: 'two lengths', text: '50,000 mm', one: [{ value: 50, unit: 'mm' }], other: [{ value: 50_000, unit: 'mm' }] }],
  ] as const)('"%s" in %s is asked again', (text, unit, wrong) => {
    expect(fault(readDistance(text, unit))).toEqual(wrong);
  });
});

describe('every length that is written is read back', () => {
  const units = [
    ['mm', 1],
    ['cm', 10],
    ['m', 1000],
    ['in', 25.4],
    ['ft', 304.8],
  ] as const;
  const spelt = {
    mm: ['mm', ' mm', ' millimetres'],
    cm: ['cm', ' cm'],
    m: ['m', ' m', ' meters'],
    in: ['in', ' in', '"', '\u2033'],
    ft: ['ft', ' ft', "'", '\u2032'],
  };
  const hundredths = fc.integer({ min: 5000, max: 50_000_000 });

  it('in every unit and spelling, with a decimal point or comma of up to two digits', () => {
    fc.assert(
      fc.property(hundredths, fc.constantFrom(...units), fc.nat(), fc.constantFrom('.', ','), (length, [unit, size], way, mark) => {
        const written = (length / 100 / size).toFixed(2).replace('.', mark) + spelt[unit][way % spelt[unit].length];
        const meant = Number((length / 100 / size).toFixed(2)) * size;
        fc.pre(meant >= 50 && meant <= 500_000);
        expect(value(readDistance(written, 'm'))).toBeCloseTo(meant, 6);
      }),
    );
  });

  it('with thousands parted by commas or blanks, where decimals follow', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100_000, max: 50_000_000 }), fc.constantFrom(',', ' ', '\u00a0'), (length, mark) => {
        const [whole = '', decimals = ''] = (length / 100).toFixed(2).split('.');
        const written = `${whole.replace(/\B(?=(\d{3})+$)/g, mark)}.${decimals} mm`;
        expect(value(readDistance(written, 'm'))).toBeCloseTo(length / 100, 6);
      }),
    );
  });

  it('with thousands alone: as thousands, as the only length in range, or asked about; never another length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 999_999 }), fc.constantFrom(...units), (count, [unit, size]) => {
        const read = readDistance(`${count.toLocaleString('en')} ${unit}`, 'm');
        const ways = [(count / 1000) * size, count * size].filter((length) => length >= 50 && length <= 500_000);
        const answer = read.ok ? Math.abs(read.value - (ways[0] ?? 0)) < 1e-6 : read.fault.is;
        expect(answer).toBe(['distance out of range', true, 'two lengths'][ways.length]);
      }),
    );
  });

  it('in feet and inches, however they are signed', () => {
    const signs = fc.constantFrom(['ft', 'in'], [' ft ', ' in'], ["'", '"'], ['\u2032 ', '\u2033'], [' feet ', ' inches'], [' ft ', '']);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1600 }), fc.integer({ min: 0, max: 119 }), signs, (feet, tenths, [foot, inch]) => {
        expect(value(readDistance(`${feet}${foot}${tenths / 10}${inch}`, 'ft'))).toBeCloseTo(feet * 304.8 + tenths * 2.54, 6);
      }),
    );
  });

  it('over the whole range, as the screen writes it', () => {
    fc.assert(
      // From 0.17 ft, the least that the sentence for feet allows.
      fc.property(fc.integer({ min: 52, max: 499_000 }), fc.constantFrom('m', 'ft'), (distance, unit) => {
        const written = write.distance(mm(distance), unit);
        const inUnit = Number(written.split('\u00a0')[0]);
        expect(value(readDistance(written, unit === 'm' ? 'ft' : 'm'))).toBeCloseTo(inUnit * (unit === 'm' ? 1000 : 304.8), 6);
      }),
    );
  });
});

describe('focal lengths', () => {
  it.each([
    ['1,200', 1200],
    ['1,200 mm', 1200],
    ['4,250', 4.25],
    ['85', 85],
    ['85 mm', 85],
    ['16,5', 16.5],
  ])('"%s" is %d mm', (text, expected) => expect(value(readFocalLength(text))).toBe(expected));

  it.each([
    ['0.085', { is: 'focal length in metres', typed: 0.085, meant: 85 }],
    ['0.085 m', { is: 'focal length in another unit', typed: [{ value: 0.085, unit: 'm' }], meant: 85 }],
    ['8.5cm', { is: 'focal length in another unit', typed: [{ value: 8.5, unit: 'cm' }], meant: 85 }],
    ['0', { is: 'no focal length' }],
    ['wide', { is: 'focal length unread' }],
  ])('"%s" is asked again', (text, wrong) => expect(fault(readFocalLength(text))).toEqual(wrong));
});
