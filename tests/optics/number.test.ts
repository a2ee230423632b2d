import { describe, expect, it } from 'vitest';
import { readIsoSpeed, readShutter } from '../../src/optics/exposure.ts';
import { readCount, readNumber } from '../../src/optics/quantity.ts';
import { value } from './value.ts';

describe('numbers as people type them', () => {
  it.each([
    ['2.8', 2.8],
    ['2,8', 2.8],
    ['\u22122.5', -2.5],
    ['+3', 3],
    ['0,030', 0.03],
    ['1,234.5', 1234.5],
    ['1,234,567', 1_234_567],
  ])('"%s" is %d', (text, expected) => expect(readNumber(text)).toBe(expected));

  it.each(['', 'x', '1,5,2', '--1', '1,000', '12,500'])('"%s" is none, or could be two: it is not guessed', (text) => {
    expect(readNumber(text)).toBeNull();
  });
});

describe('counts', () => {
  it.each([
    ['6000', 6000],
    ['6,000', 6000],
    ['6.000', 6000],
    ['6 000', 6000],
    ['1,234,567', 1_234_567],
    ['812.5', 812.5],
    ['812,5', 812.5],
  ])('"%s" is %d', (text, expected) => expect(readCount(text)).toBe(expected));

  it('an ISO speed and a shutter are read so', () => {
    expect(value(readIsoSpeed('ISO 1,600'))).toBe(1600);
    expect(value(readShutter('1/1,250'))).toBe(1 / 1250);
  });
});
