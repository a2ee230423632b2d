import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benchDistance, type DistanceWish } from '../../src/optics/distance.ts';
import {
  distanceFor,
  fromFilmPlane,
  lensToTarget,
  measuredMagnification,
  shortenedFocalLength,
  thinLensMagnification,
} from '../../src/optics/magnification.ts';
import { magnification } from '../../src/optics/quantity.ts';
import { pixelPitch, SENSORS } from '../../src/optics/sensor.ts';
import { millimetres as mm } from '../../src/units.ts';
import { fault, value } from './value.ts';

const lens = { focalLength: mm(85), closestFocus: mm(800) };
const at = (wish: DistanceWish, of: Parameters<typeof benchDistance>[0] = lens) => benchDistance(of, wish, 'm');

describe('the bench distance', () => {
  it('is fifty focal lengths unless something else is asked', () => {
    expect(value(at({ wish: 'usual' }))).toMatchObject({ distance: 4250, stands: 'usual' });
  });

  it('a short room gives what it has, and says so down to twenty-five focal lengths', () => {
    expect(value(at({ wish: 'room', longest: mm(3000) }))).toMatchObject({ distance: 3000, stands: 'short' });
    expect(value(at({ wish: 'room', longest: mm(1000) }))).toMatchObject({ distance: 1000, stands: 'near' });
    expect(value(at({ wish: 'room', longest: mm(9000) })).distance).toBe(4250);
  });

  it('below the closest focus it says where to put the target', () => {
    expect(fault(at({ wish: 'used', distance: mm(500) }))).toEqual({ is: 'nearer than its closest focus', wanted: 500, closest: 800, unit: 'm' });
  });

  it('a lens that cannot focus as near as fifty focal lengths stands at its closest focus', () => {
    const shy = { focalLength: mm(16), closestFocus: mm(1200) };
    expect(value(at({ wish: 'usual' }, shy))).toMatchObject({ distance: 1200, stands: 'at closest focus' });
  });

  it('a macro lens stands where a thin lens gives its magnification', () => {
    const macro = value(at({ wish: 'macro', magnification: magnification(0.5) }, { focalLength: mm(100), closestFocus: mm(300) }));
    expect(macro.distance).toBeCloseTo(450, 9);
    expect(macro.stands).toBe('near');
  });
});

describe('magnification', () => {
  it('the two conventions agree once the image distance is taken off', () => {
    fc.assert(
      fc.property(fc.double({ min: 8, max: 800, noNaN: true }), fc.double({ min: 0.001, max: 1, noNaN: true }), (f, m) => {
        const film = { from: 'film plane', distance: distanceFor(mm(f), magnification(m)) } as const;
        const front = { from: 'front of lens', distance: lensToTarget(mm(f), magnification(m)) } as const;
        // At life size the film-plane form is flat: two digits in the distance are one in the magnification.
        expect(value(thinLensMagnification(mm(f), film))).toBeCloseTo(m, 5);
        expect(value(thinLensMagnification(mm(f), front))).toBeCloseTo(m, 9);
        expect(shortenedFocalLength(film, magnification(m))).toBeCloseTo(f, 6);
        expect(shortenedFocalLength(front, magnification(m))).toBeCloseTo(f, 6);
      }),
    );
  });

  it('a distance from the front of the lens needs the lens’s length to be one from the film plane', () => {
    expect(fromFilmPlane({ from: 'front of lens', distance: mm(4000) }, mm(150))).toBe(4150);
    expect(fromFilmPlane({ from: 'film plane', distance: mm(4000) }, mm(150))).toBe(4000);
  });

  it('100 mm of scale over 340 pixels of 6 µm is about 1/49', () => {
    expect(1 / value(measuredMagnification(mm(100), 340, mm(0.006)))).toBeCloseTo(49.02, 2);
  });

  it('nearer than any lens can focus is refused', () => {
    expect(fault(thinLensMagnification(mm(85), { from: 'film plane', distance: mm(300) }))).toEqual({
      is: 'no focus so near',
      focalLength: 85,
      distance: 300,
      from: 'film plane',
    });
  });

  it('impossible counts are refused, each by its name', () => {
    expect(fault(measuredMagnification(mm(0), 340, mm(0.006)))).toEqual({ is: 'no length on the target' });
    expect(fault(measuredMagnification(mm(100), 0, mm(0.006)))).toEqual({ is: 'no pixels' });
    expect(fault(measuredMagnification(mm(100), 340, mm(6)))).toEqual({ is: 'no pixel pitch' });
    expect(fault(pixelPitch(SENSORS[0]!, 6))).toEqual({ is: 'no width of a photograph' });
  });
});
