import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAperture, readIsoSpeed, readShutter } from '../../src/optics/exposure.ts';
import { lightCautions, shutterCaution } from '../../src/optics/lamps.ts';
import { illuminance, LIGHT_SENTENCES, lightVerdict, measuredEv } from '../../src/optics/light.ts';
import { ev, fNumber } from '../../src/optics/quantity.ts';
import { exactShutter } from '../../src/optics/stops.ts';
import { seconds } from '../../src/units.ts';
import { said, value } from './value.ts';

describe('exposure as cameras write it', () => {
  it.each([
    ['1/125', 1 / 125],
    ['1/125 s', 1 / 125],
    ['125', 1 / 125],
    ['0.5', 0.5],
    ['2"', 2],
    ['1"3', 1.3],
    ['0"5', 0.5],
    ['2 s', 2],
    ['30\u2033', 30],
  ])('the shutter "%s" is %d s', (text, expected) => expect(value(readShutter(text))).toBeCloseTo(expected, 12));

  it.each(['2', '', '1/0', 'bulb', '-4', '0'])('the shutter "%s" is asked again', (text) => {
    expect(said(readShutter(text))).toBe(
      'Write the shutter as 1/125 for a fraction of a second, or as 2" for whole seconds.',
    );
  });

  it.each([
    ['2.8', 2.8],
    ['f/2.8', 2.8],
    ['F2,8', 2.8],
    ['1:2.8', 2.8],
  ])('the aperture "%s" is %d', (text, expected) => expect(value(readAperture(text))).toBe(expected));

  it.each(['0', 'f/0', '', 'wide', '500'])('the aperture "%s" is answered with what to do', (text) => {
    expect(said(readAperture(text))).toBe(
      'Enter the aperture as the lens or the camera shows it, such as 2.8: it lies between 0.7 and 128.',
    );
  });

  it('ISO is read with or without its letters, and 0 is asked again', () => {
    expect(value(readIsoSpeed('ISO 400'))).toBe(400);
    expect(said(readIsoSpeed('0'))).toBe('Enter the ISO speed as the camera shows it, such as 400.');
  });

  it.each([
    [1 / 60, 1 / 64],
    [1 / 125, 1 / 128],
    [1 / 45, 2 ** -5.5],
    [15, 16],
    [30, 32],
  ])('the shown %d s stands for %d s', (shown, exact) => expect(exactShutter(seconds(shown))).toBeCloseTo(exact, 9));
});

describe('light', () => {
  const reading = (iso: number, n: number, t: number) => measuredEv({ iso, aperture: fNumber(n), shutter: seconds(t) });

  it('nominal stops add up to whole values: ISO 100, f/11 at 1/60 is EV 13', () => {
    expect(reading(100, 11, 1 / 60)).toBeCloseTo(13, 9);
  });

  it('four times the speed at the same exposure is two values less light', () => {
    fc.assert(
      fc.property(fc.constantFrom(1.4, 2, 2.8, 4, 5.6, 8), fc.constantFrom(1 / 1000, 1 / 125, 1 / 15, 1), (n, t) => {
        expect(reading(100, n, t) - reading(400, n, t)).toBeCloseTo(2, 9);
      }),
    );
  });

  it('one value more is twice the light', () => {
    expect(illuminance(ev(9)) / illuminance(ev(8))).toBeCloseTo(2, 12);
  });

  it.each([
    [5, 'too dim'],
    [7, 'fine'],
    [9, 'plenty'],
  ] as const)('EV %d is %s', (at, verdict) => {
    expect(lightVerdict(ev(at))).toBe(verdict);
    expect(LIGHT_SENTENCES[verdict]).toMatch(/\.$/);
  });

  it('the threshold is the person’s', () => {
    expect(lightVerdict(ev(5), { fine: ev(4), plenty: ev(5) })).toBe('plenty');
  });

  it('a shutter that cuts a swell of the lamp short is cautioned with one that does not', () => {
    const caution = (mains: 50 | 60, shutter: number) => shutterCaution('mains lamp', mains, seconds(shutter));
    expect(caution(50, 1 / 100)).toBeNull();
    expect(caution(60, 1 / 60)).toBeNull();
    expect(caution(50, 1 / 500)).toMatch(/choose 1\/100 s or a whole multiple of it/);
    expect(caution(50, 1 / 66)).not.toBeNull();
    expect(shutterCaution('daylight', 50, seconds(1 / 500))).toBeNull();
  });

  it('warm lamps are cautioned for flicker and colour, daylight for nothing', () => {
    expect(lightCautions('daylight', 50)).toEqual([]);
    expect(lightCautions('warm lamp', 60).join(' ')).toMatch(/120 times.*Warm light/);
  });
});
