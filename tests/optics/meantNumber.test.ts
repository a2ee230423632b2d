import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readLikely, readWithin } from '../../src/optics/meantNumber.ts';
import { fault, value } from './value.ts';

const between = (least: number, most: number) =>
  v.pipe(v.number('no reach' as const), v.minValue(least, 'no reach' as const), v.maxValue(most, 'no reach' as const));
const two = (text: string, one: number, other: number) => ({ is: 'two numbers', text, one, other });

describe('a number within a range', () => {
  it.each([
    ['1,000', 20, 2000, 1000],
    ['1.000', 20, 2000, 1000],
    ['1 000', 20, 2000, 1000],
    ['1\u202f000', 20, 2000, 1000],
    ['1.234.567', 20, 2e6, 1_234_567],
    ['1,200', 1, 1000, 1.2],
    ['1.250', 1, 2000, 1.25],
    ['1.000', 1, 2000, 1],
    ['\u22121,000', -2000, -20, -1000],
    ['0,030', 0.001, 0.2, 0.03],
    ['12,5', 1, 1000, 12.5],
    ['－１２', -20, 20, -12],
    ['１．５', 1, 20, 1.5],
  ])('"%s" from %d to %d is %d', (text, least, most, expected) => expect(value(readWithin(between(least, most), text))).toBe(expected));

  it.each([
    ['1,000', two('1,000', 1, 1000)],
    [' 1,250 ', two('1,250', 1.25, 1250)],
    ['1,00,0', { is: 'no reach' }],
    ['2000', { is: 'no reach' }],
    ['', { is: 'no reach' }],
  ])('"%s" from 1 to 1999 is asked again', (text, wrong) => expect(fault(readWithin(between(1, 1999), text))).toEqual(wrong));

  it('with thousands parted by commas: the only one in range, asked about where there are two, and never another number', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 999_999 }),
        fc.double({ min: 0.1, max: 1e5, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        (count, least, span) => {
          const read = readWithin(between(least, least * span), count.toLocaleString('en'));
          const ways = [count / 1000, count].filter((way) => way >= least && way <= least * span);
          expect(read.ok ? read.value : read.fault.is).toBe(ways.length === 2 ? 'two numbers' : (ways[0] ?? 'no reach'));
        },
      ),
    );
  });
});

describe('a number that is likely to lie within a range', () => {
  const likely = between(5, 500);

  it.each([
    ['12,000', 12],
    ['400', 400],
    ['2000', 2000],
    ['1', 1],
    ['1.250', 1.25],
  ])('"%s" is %d: the range refuses nothing', (text, expected) => expect(value(readLikely(likely, text, { is: 'no spot' }))).toBe(expected));

  it('where neither is likely, or both are, the two are asked about', () => {
    expect(fault(readLikely(likely, '1,000', { is: 'no spot' }))).toEqual(two('1,000', 1, 1000));
    expect(fault(readLikely(between(1, 5000), '1,000', { is: 'no spot' }))).toEqual(two('1,000', 1, 1000));
  });

  it('what is no number has the fault of its field', () => expect(fault(readLikely(likely, 'wide', { is: 'no spot' }))).toEqual({ is: 'no spot' }));
});
