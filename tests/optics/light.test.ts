import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAperture, readIsoSpeed, readShutter } from '../../src/optics/exposure.ts';
import { flickerShows } from '../../src/optics/lamps.ts';
import { illuminance, lightVerdict, measuredEv } from '../../src/optics/light.ts';
import { ev, fNumber } from '../../src/optics/quantity.ts';
import { lampCautions } from '../../src/optics/setUp/caution.ts';
import { exactShutter } from '../../src/optics/stops.ts';
import { seconds } from '../../src/units.ts';
import { fault, value } from './value.ts';

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
    ['１／１２５', 1 / 125],
    ['2秒', 2],
    ['2 Sek.', 2],
    ['0,5 segundos', 0.5],
  ])('the shutter "%s" is %d s', (text, expected) => expect(value(readShutter(text))).toBeCloseTo(expected, 12));

  it.each(['2', '', '1/0', 'bulb', '-4', '0'])('the shutter "%s" is asked again', (text) => {
    expect(fault(readShutter(text))).toEqual({ is: 'no shutter' });
  });

  it.each([
    ['2.8', 2.8],
    ['f/2.8', 2.8],
    ['F2,8', 2.8],
    ['1:2.8', 2.8],
  ])('the aperture "%s" is %d', (text, expected) => expect(value(readAperture(text))).toBe(expected));

  it.each(['0', 'f/0', '', 'wide', '500'])('the aperture "%s" is asked again', (text) => {
    expect(fault(readAperture(text))).toEqual({ is: 'no aperture' });
  });

  it('ISO is read with or without its letters, and 0 is asked again', () => {
    expect(value(readIsoSpeed('ISO 400'))).toBe(400);
    expect(fault(readIsoSpeed('0'))).toEqual({ is: 'no iso speed' });
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
  });

  it('the threshold is the person’s', () => {
    expect(lightVerdict(ev(5), { fine: ev(4), plenty: ev(5) })).toBe('plenty');
  });

  it('a shutter that cuts a swell of the lamp short shows its flicker, one of whole swells does not', () => {
    const shows = (mains: 50 | 60, shutter: number) => flickerShows('mains lamp', mains, seconds(shutter));
    expect(shows(50, 1 / 100)).toBe(false);
    expect(shows(60, 1 / 60)).toBe(false);
    expect(shows(50, 1 / 500)).toBe(true);
    expect(shows(50, 1 / 66)).toBe(true);
    expect(flickerShows('daylight', 50, seconds(1 / 500))).toBe(false);
  });

  it('warm lamps are cautioned for flicker and colour, daylight for nothing', () => {
    const misleading = (lighting: 'daylight' | 'steady lamp' | 'mains lamp' | 'warm lamp') => lampCautions(lighting, 60).filter(({ may }) => may === 'mislead');
    expect(lampCautions('daylight', 50)).toEqual([]);
    expect(misleading('steady lamp')).toEqual([]);
    expect(misleading('mains lamp')).toEqual([{ may: 'mislead', is: 'lamps on the mains', mains: 60 }]);
    expect(misleading('warm lamp').map(({ is }) => is)).toEqual(['lamps on the mains', 'warm light']);
  });
});
