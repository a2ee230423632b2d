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
import { degrees, fNumber, type Magnification } from '../../src/optics/quantity.ts';
import { depthOfField, hyperfocal, limitsOfField, shareOfDepth } from '../../src/optics/depthOfField.ts';
import { mirrorOffset, pixelsOnSensor, spotOffset, tiltFromMirror, tiltFromSpot } from '../../src/optics/mirror.ts';
import { placeDepth } from '../../src/optics/placement.ts';
import { confusion, FULL_FRAME, pixelPitch, readSensor, writeSensor } from '../../src/optics/sensor.ts';
import { allowedTilt, areaAtTarget, depthAcross, edgeDefocus, eyeIsEnough } from '../../src/optics/squareness.ts';
import { bandWidth, stepAtTarget, USUAL_STEP_WORTH, worthOfStep } from '../../src/optics/stepWorth.ts';
import { exactAperture, exactIso, exactShutter } from '../../src/optics/stops.ts';
import { millimetres as mm, steps } from '../../src/units.ts';

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

describe('what follows from the blur', () => {
  const blur = { aperture: fNumber(2), confusion: mm(0.02) };
  const m = (value: number) => value as Magnification;

  test('depth is N c (1 + m) over m² and what it skews, and has no end at the hyperfocal distance', () => {
    // N c is 0.04; at 0.1: 0.044 over 0.01 and 0.1 times 0.04 over 50, 0.00008.
    expect(depthOfField(blur, m(0.1), mm(50))).toEqual({
      front: 0.044 / 0.01008,
      behind: 0.044 / 0.00992,
      total: expect.closeTo(0.044 / 0.01008 + 0.044 / 0.00992, 9),
    });
    expect(depthOfField({ ...blur, pupilRatio: 2 }, m(0.1), mm(50)).front).toBeCloseTo(0.042 / 0.01008, 9);
    // m = 0.04 / 50.
    expect([0.0008, 0.000801].map((each) => depthOfField(blur, m(each), mm(50)).behind === 'infinite')).toEqual([true, false]);
    expect(hyperfocal(blur, mm(50))).toBe(62_550);
    const depth = { front: mm(40), behind: mm(80), total: mm(120) };
    expect([limitsOfField(depth, mm(500)), limitsOfField({ ...depth, behind: 'infinite' }, mm(500)).far]).toEqual([{ near: 460, far: 580 }, 'infinite']);
    expect([shareOfDepth(-20, depth), shareOfDepth(20, depth), shareOfDepth(0, depth), shareOfDepth(20, { ...depth, behind: 'infinite' })]).toEqual(
      [0.5, 0.25, 0, 0].map((share) => expect.closeTo(share, 9)),
    );
  });

  test('a step is worth a share of N c, by 1 / m² at the target, from a hundredth to the whole', () => {
    expect(stepAtTarget(blur, USUAL_STEP_WORTH, m(0.1))).toBeCloseTo(0.5, 9);
    expect([worthOfStep(mm(0.5), blur, m(0.1)), worthOfStep(mm(0.039), blur, m(0.1)), worthOfStep(mm(4.01), blur, m(0.1))]).toEqual([
      expect.closeTo(0.125, 9),
      null,
      null,
    ]);
    const looks = (values: number, worth: number) => bandWidth(values, worth as never).looks;
    expect([looks(1, 0.099), looks(1, 0.1), looks(20, 0.125), looks(21, 0.125)]).toEqual(['narrow', 'plausible', 'plausible', 'wide']);
  });

  test('a tilt is allowed that costs half a step at the edge of the area', () => {
    // A step is 0.005 at the sensor; half of it over 0.1 times 1.25.
    const allowed = allowedTilt(blur, USUAL_STEP_WORTH, mm(2.5), m(0.1));
    expect(allowed).toBeCloseTo((Math.atan(0.02) * 180) / Math.PI, 9);
    expect(edgeDefocus(mm(2.5), m(0.1), degrees(-allowed))).toBeCloseTo(0.0025, 9);
    expect([areaAtTarget(mm(2.5), m(0.1)), depthAcross(degrees(-30), mm(100))]).toEqual([25, expect.closeTo(50, 9)]);
    expect([10, 10.1].map((angle) => eyeIsEnough(degrees(angle)))).toEqual([false, true]);
  });
});

describe('a mirror', () => {
  test('tells tilts up to 45 degrees, and a spot comes back at twice the angle', () => {
    expect([tiltFromMirror(mm(50), mm(50)), tiltFromMirror(mm(50), mm(-50)), tiltFromMirror(mm(50), mm(50.1))].map(readable)).toEqual([true, true, false]);
    expect(mirrorOffset(mm(50), degrees(45))).toBeCloseTo(50, 9);
    expect([tiltFromSpot(mm(100), mm(0)), tiltFromSpot(mm(100), mm(100)), tiltFromSpot(mm(100), mm(-1)), tiltFromSpot(mm(100), mm(101))].map(readable)).toEqual(
      [true, true, false, false],
    );
    expect(tiltFromSpot(mm(100), mm(100))).toMatchObject({ value: expect.closeTo(22.5, 9) });
    expect([spotOffset(mm(100), degrees(22.5)), pixelsOnSensor(200, mm(0.005))]).toEqual([expect.closeTo(100, 9), 1]);
  });
});

describe('a sensor', () => {
  test('has sides of 4 by 3 to 100, and 500 to 30,000 pixels across', () => {
    const read = (text: string) => writeSensor(readSensor(text));
    expect([read('4x3'), read('3.9x3'), read('4x2.9'), read('100x100'), read('101x50'), read('50x101'), read('x')]).toEqual([
      '4x3',
      '36x24',
      '36x24',
      '100x100',
      '36x24',
      '36x24',
      '36x24',
    ]);
    expect([499, 500, 30_000, 30_001].map((pixels) => readable(pixelPitch(FULL_FRAME, pixels)))).toEqual([false, true, true, false]);
    expect(pixelPitch(FULL_FRAME, 6000)).toMatchObject({ value: 0.006 });
  });

  test('has a circle of confusion by its diagonal, its crop or a print', () => {
    const half = { width: mm(18), height: mm(12) };
    expect([
      confusion(FULL_FRAME, { by: 'diagonal' }),
      confusion(half, { by: 'traditional' }),
      confusion(half, { by: 'print' }),
      confusion(half, { by: 'own', diameter: mm(0.01) }),
    ]).toEqual([Math.hypot(36, 24) / 1500, 0.015, 0.25 / 15, 0.01].map((diameter) => expect.closeTo(diameter, 9)));
  });
});

test('stops stand for whole powers of the root of two, as far as they are rounded', () => {
  expect([11, 22, 5.6, 1.8, 7.7].map((shown) => exactAperture(fNumber(shown)))).toEqual(
    [2 ** 3.5, 2 ** 4.5, 2 ** 2.5, 2 ** (5 / 6), 7.7].map((stop) => expect.closeTo(stop, 9)),
  );
  expect([1 / 60, 15, 1 / 55].map((shown) => exactShutter(shown as never))).toEqual([1 / 64, 16, 1 / 55].map((time) => expect.closeTo(time, 2)));
  expect([exactIso(100), exactIso(125), exactIso(3200), exactIso(111)]).toEqual([100, 100 * 2 ** (1 / 3), 3200, 111].map((iso) => expect.closeTo(iso, 9)));
});

describe('the depth placed on purpose', () => {
  const depth = { front: mm(40), behind: mm(60), total: mm(100) };
  const scale = { min: steps(-10), max: steps(10), step: 1 };
  const place = (share: number, on = 0, step = 5) => placeDepth(steps(on), share as never, depth, mm(step), scale);

  test('moves the focus by what the front grows', () => {
    expect(place(0.5)).toEqual({ ok: true, value: { shift: 10, chosen: 2, onSubject: 0, moved: 2, share: 0.5 } });
    expect(place(0.25, 3)).toMatchObject({ value: { shift: -15, chosen: 0, moved: -3 } });
  });

  test('is none beyond the scale by more than a step, or of a depth without end', () => {
    expect([place(1, 0, 6), place(1, 0, 5.4), place(0, 0, 3.7), place(0, 0, 3.6)].map(readable)).toEqual([true, false, true, false]);
    expect(readable(placeDepth(steps(0), 0.5 as never, { ...depth, total: 'infinite' }, mm(5), scale))).toBe(false);
  });
});
