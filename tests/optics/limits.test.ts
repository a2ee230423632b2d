// Contracts of the bench's readings at their very limits.
import { describe, expect, test } from 'vitest';
import { readIsoSpeed, readShutter } from '../../src/optics/exposure.ts';
import { judgeTilt, nearerEdges, rectangleFor, tiltFromSides, type Room, type Tilt } from '../../src/optics/fourSides.ts';
import {
  distanceFor,
  fromFilmPlane,
  lensToTarget,
  measuredMagnification,
  shortenedFocalLength,
  thinLensMagnification,
} from '../../src/optics/magnification.ts';
import { rampError, rampLean } from '../../src/optics/print/ramp.ts';
import { windows } from '../../src/optics/print/sheets.ts';
import { degrees, type Magnification } from '../../src/optics/quantity.ts';
import { millimetres as mm } from '../../src/units.ts';

const readable = (result: { readonly ok: boolean }): boolean => result.ok;

test('an ISO speed lies between 6 and 3,300,000', () => {
  expect(['5', '6', '3300000', '3300001', 'ISO 100'].map((text) => readable(readIsoSpeed(text)))).toEqual([false, true, true, false, true]);
});

describe('a shutter time', () => {
  test('lies between a 64,000th of a second and an hour', () => {
    expect(['1/64000', '1/64001', '3600 s', '3601 s', '64000', '64001'].map((text) => readable(readShutter(text)))).toEqual([
      true,
      false,
      true,
      false,
      true,
      false,
    ]);
  });

  test('that is a bare whole number is a fraction from 4 on, seconds at 1, and neither at 2 and 3', () => {
    expect(readShutter('4')).toMatchObject({ value: 0.25 });
    expect(readShutter('1')).toMatchObject({ value: 1 });
    expect(['2', '3'].map((text) => readable(readShutter(text)))).toEqual([false, false]);
    expect(readShutter('2.5')).toMatchObject({ value: 2.5 });
    expect(readShutter('4.5')).toMatchObject({ value: 4.5 });
  });

  test('may be marked as seconds, with a decimal behind the mark', () => {
    expect([`2"`, `1"3`, `15''`, '2 s', '1/4 s'].map(readShutter)).toMatchObject([2, 1.3, 15, 2, 0.25].map((value) => ({ value })));
  });
});

describe('four sides', () => {
  const rectangle = { width: mm(200), height: mm(100), fromLens: mm(1000) };
  const sides = (left: number, right: number, top: number, bottom: number) => tiltFromSides({ left, right, top, bottom }, rectangle, 0.001);

  test('tell the sine of a tilt by twice the distance over the side', () => {
    // (101 - 99) / 200 times 10 is 0.1, and times 20 is 0.2.
    const told = sides(101, 99, 99, 101);
    expect(told).toMatchObject({ ok: true });
    const tilt = told.ok ? told.value : null;
    expect(tilt?.sideways).toBeCloseTo(5.7392, 3);
    expect(tilt?.leaning).toBeCloseTo(-11.537, 3);
    expect(tilt?.whole).toBeCloseTo(12.921, 3);
    // By the smaller side, an arm of 20: 0.02 over the root of 2, in degrees.
    expect(tilt?.uncertainty).toBeCloseTo(0.8103, 3);
    expect(tiltFromSides({ left: 1, right: 1, top: 1, bottom: 1 }, rectangle, 9)).toMatchObject({ value: { uncertainty: 90 } });
  });

  test('are believed up to 30 degrees, either way', () => {
    expect([sides(104.9, 95.1, 100, 100), sides(105.1, 94.9, 100, 100), sides(94.9, 105.1, 100, 100)].map(readable)).toEqual([true, false, false]);
    expect([sides(100, 100, 102.4, 97.6), sides(100, 100, 102.6, 97.4), sides(100, 100, 97.4, 102.6)].map(readable)).toEqual([true, false, false]);
  });

  test('have lengths', () => {
    expect([sides(0, 1, 1, 1), sides(1, -1, 1, 1), sides(1, 1, Infinity, 1), sides(1, 1, 1, NaN), sides(1, 1, 1, 1)].map(readable)).toEqual([
      false,
      false,
      false,
      false,
      true,
    ]);
  });

  test('are square, or not, where the tilt is clear of what is allowed by twice its doubt', () => {
    const tilt = (whole: number): Tilt => ({ sideways: degrees(whole), leaning: degrees(0), whole: degrees(whole), uncertainty: degrees(1) });
    const verdict = (whole: number) => judgeTilt(tilt(whole), degrees(5)).verdict;
    expect([3, 3.1, 7, 7.1].map(verdict)).toEqual(['square', 'cannot tell', 'cannot tell', 'turn']);
    expect(judgeTilt(tilt(8), degrees(5))).toEqual({ verdict: 'turn', away: ['left'] });
  });

  test('that cannot tell ask for marks farther apart where the picture holds them', () => {
    const tilt: Tilt = { sideways: degrees(4), leaning: degrees(0), whole: degrees(4), uncertainty: degrees(1) };
    const room = (width: number, height: number): Room => ({ fromLens: mm(1000), seen: { width: mm(width), height: mm(height) }, error: 0.001 });
    const finer = (at?: Room) => judgeTilt(tilt, degrees(4), at);
    const apart = rectangleFor(degrees(1), room(0, 0));
    expect(apart).toBeCloseTo(81.03, 2);
    expect(finer()).toEqual({ verdict: 'cannot tell', finer: { by: 'a larger rectangle' } });
    expect(finer(room(200, 82))).toEqual({ verdict: 'cannot tell', finer: { by: 'marks', apart } });
    expect(finer(room(82, 200))).toMatchObject({ finer: { by: 'marks' } });
    expect(finer(room(200, 81))).toMatchObject({ finer: { by: 'the mirror alone' } });
    expect(finer(room(81, 200))).toMatchObject({ finer: { by: 'the mirror alone' } });
  });

  test('name the nearer edges, leaving out the way that is less than a third of the other', () => {
    const edges = (sideways: number, leaning: number) => nearerEdges({ sideways: degrees(sideways), leaning: degrees(leaning) });
    expect([edges(3, 1), edges(3, 1.1), edges(-1, -3), edges(0.9, -3), edges(-3, 3)]).toEqual([
      ['left'],
      ['left', 'top'],
      ['right', 'bottom'],
      ['bottom'],
      ['right', 'top'],
    ]);
  });
});

describe('magnification', () => {
  const m = (value: number) => value as Magnification;
  const thin = (focalLength: number, distance: number, from: 'film plane' | 'front of lens') =>
    thinLensMagnification(mm(focalLength), { from, distance: mm(distance) });

  test('of a thin lens is 1 at four focal lengths from film to target, and there is none nearer', () => {
    expect(thin(50, 200, 'film plane')).toMatchObject({ value: expect.closeTo(1, 9) });
    expect(readable(thin(50, 199.9, 'film plane'))).toBe(false);
    // D = f (m + 1/m + 2): a tenth at 12.1 focal lengths.
    expect(thin(50, 605, 'film plane')).toMatchObject({ value: expect.closeTo(0.1, 9) });
    expect(distanceFor(mm(50), m(0.1))).toBeCloseTo(605, 9);
  });

  test('from the front of the lens is f over what lies beyond f', () => {
    expect(thin(50, 550, 'front of lens')).toMatchObject({ value: 0.1 });
    expect([thin(50, 50, 'front of lens'), thin(50, 49, 'front of lens')].map(readable)).toEqual([false, false]);
    expect(lensToTarget(mm(50), m(0.1))).toBe(550);
  });

  test('is measured on ten pixels at least, of half a thousandth to a twentieth of a millimetre', () => {
    const measured = (length: number, pixels: number, pitch: number) => readable(measuredMagnification(mm(length), pixels, mm(pitch)));
    expect([measured(100, 10, 0.005), measured(100, 9.9, 0.005), measured(0, 100, 0.005)]).toEqual([true, false, false]);
    expect([measured(100, 9000, 0.0005), measured(100, 9000, 0.00051), measured(100, 900, 0.05), measured(100, 900, 0.049)]).toEqual([
      false,
      true,
      false,
      true,
    ]);
    expect(measuredMagnification(mm(100), 4000, mm(0.005))).toMatchObject({ value: 0.2 });
  });

  test('tells the focal length that the lens has there, from wherever the distance was measured', () => {
    expect(shortenedFocalLength({ from: 'film plane', distance: mm(605) }, m(0.1))).toBeCloseTo(50, 9);
    expect(shortenedFocalLength({ from: 'front of lens', distance: mm(550) }, m(0.1))).toBeCloseTo(50, 9);
    expect([fromFilmPlane({ from: 'film plane', distance: mm(500) }, mm(80)), fromFilmPlane({ from: 'front of lens', distance: mm(500) }, mm(80))]).toEqual([
      500, 580,
    ]);
  });
});

describe('the ramp', () => {
  test('leans by the arc sine of its set-back over its face', () => {
    expect(rampLean(mm(50), mm(100))).toMatchObject({ value: expect.closeTo(30, 9) });
    expect([rampLean(mm(0), mm(100)), rampLean(mm(100), mm(100)), rampLean(mm(-5), mm(100))].map(readable)).toEqual([false, false, false]);
  });

  test('reads between 10 and 80 degrees, and by the sine of its lean', () => {
    expect([9.9, 10, 80, 80.1].map((lean) => readable(rampError(5, degrees(lean))))).toEqual([false, true, true, false]);
    expect(rampError(10, degrees(30))).toMatchObject({ value: expect.closeTo((10 * 0.5) / Math.SQRT1_2, 6) });
    expect(readable(rampError(NaN))).toBe(false);
  });
});

test('windows share ten millimetres, are all of one size, and no more than are needed', () => {
  expect(windows(190, 190)).toEqual({ starts: [0], size: 190 });
  expect(windows(191, 190)).toEqual({ starts: [0, 90.5], size: 100.5 });
  expect(windows(370, 190)).toEqual({ starts: [0, 180], size: 190 });
  expect(windows(371, 190).starts).toHaveLength(3);
});
