// Tilt recovered on simulated rigs: a pinhole camera looks at a rectangle that leans, its sides are measured with an
// error.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeTilt, nearerEdges, rectangleFor, tiltFromSides, type FourSides } from '../../src/optics/fourSides.ts';
import { mirrorOffset, pixelsOnSensor, spotOffset, tiltFromMirror, tiltFromSpot } from '../../src/optics/mirror.ts';
import { degrees, fNumber, magnification, radians } from '../../src/optics/quantity.ts';
import { allowedTilt, depthAcross } from '../../src/optics/squareness.ts';
import { USUAL_STEP_WORTH } from '../../src/optics/stepWorth.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { millimetres as mm } from '../../src/units.ts';
import { fault, value } from './value.ts';

/** What live view shows of a rectangle turned about the upright axis, then the level one; positive: left, top nearer. */
function seen(width: number, height: number, distance: number, sideways: number, leaning: number): FourSides {
  const [a, b] = [radians(degrees(sideways)), radians(degrees(leaning))];
  const corner = (x: number, y: number) => {
    // Depth grows away from the camera; x to the right, y upwards.
    const turned = { x: x * Math.cos(a), z: x * Math.sin(a) };
    const [up, depth] = [y * Math.cos(b) + turned.z * Math.sin(b), turned.z * Math.cos(b) - y * Math.sin(b)];
    return { x: turned.x / (distance + depth), y: up / (distance + depth) };
  };
  const [w, h] = [width / 2, height / 2];
  const [leftTop, rightTop, leftBottom, rightBottom] = [corner(-w, h), corner(w, h), corner(-w, -h), corner(w, -h)];
  const side = (p: { x: number; y: number }, q: { x: number; y: number }) => 5000 * Math.hypot(p.x - q.x, p.y - q.y);
  return {
    left: side(leftTop, leftBottom),
    right: side(rightTop, rightBottom),
    top: side(leftTop, rightTop),
    bottom: side(leftBottom, rightBottom),
  };
}

const rectangle = (width: number, height: number, distance: number) => ({
  width: mm(width),
  height: mm(height),
  fromLens: mm(distance),
});

describe('tilt from the four sides', () => {
  it('without measuring error it is recovered to 0.1° about both axes at once, up to 6°', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -6, max: 6, noNaN: true }),
        fc.double({ min: -6, max: 6, noNaN: true }),
        fc.double({ min: 2, max: 25, noNaN: true }),
        (sideways, leaning, lengths) => {
          const tilt = value(tiltFromSides(seen(300, 240, 300 * lengths, sideways, leaning), rectangle(300, 240, 300 * lengths), 0));
          expect(Math.abs(tilt.sideways - sideways)).toBeLessThan(0.1);
          expect(Math.abs(tilt.leaning - leaning)).toBeLessThan(0.1);
        },
      ),
    );
  });

  /** Root mean square error about the upright axis over 400 rigs, each length measured with this error. */
  function rms(width: number, distance: number, error: number): number {
    const random = seededRandom(7);
    let sum = 0;
    for (let rig = 0; rig < 400; rig++) {
      const truth = normal(random, 0, 2);
      const exact = seen(width, width, distance, truth, normal(random, 0, 2));
      const measured = (length: number) => length * (1 + normal(random, 0, error));
      const sides = {
        left: measured(exact.left),
        right: measured(exact.right),
        top: measured(exact.top),
        bottom: measured(exact.bottom),
      };
      const tilt = tiltFromSides(sides, rectangle(width, width, distance), error);
      // A tilt too large to be believed is as wrong as that.
      sum += tilt.ok ? (tilt.value.sideways - truth) ** 2 : 30 ** 2;
    }
    return Math.sqrt(sum / 400);
  }

  it('with 0.5 % of random error it is recovered to 0.3° where marks fill the picture of a 24 mm lens', () => {
    expect(rms(1764, 1176, 0.005)).toBeLessThan(0.3);
  });

  it('with one pixel of random error it is recovered to 0.3° from marks over most of an 85 mm lens’s picture', () => {
    expect(rms(1590, 4165, 1 / 5400)).toBeLessThan(0.3);
  });

  it('with rule, distance and size each 0.5 % wrong it is recovered to 0.3° on any rig up to 10°', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 10, noNaN: true }),
        fc.double({ min: 0.6, max: 25, noNaN: true }),
        fc.tuple(...[1, 2, 3].map(() => fc.constantFrom(0.995, 1.005))),
        (truth, lengths, [rule, tape, print]) => {
          const exact = seen(300, 240, 300 * lengths, truth, 0);
          const scaled = {
            left: exact.left * rule!,
            right: exact.right * rule!,
            top: exact.top * rule!,
            bottom: exact.bottom * rule!,
          };
          const tilt = value(tiltFromSides(scaled, rectangle(300 * print!, 240 * print!, 300 * lengths * tape!), 0.005));
          expect(Math.abs(tilt.sideways - truth)).toBeLessThan(0.3);
        },
      ),
    );
  });

  /** Every lens of the table at every distance of practice, with marks over nine tenths of the picture's height. */
  const RIGS = [14, 24, 35, 50, 85, 135, 200, 400].flatMap((f) =>
    [25, 35, 50].map((multiple) => {
      const distance = f * (multiple - 1);
      return { distance, side: (0.9 * 24 * distance) / f };
    }),
  );

  it('with 0.5 % on each length 0.3° is reached exactly where the rectangle is as large as the panel asks for', () => {
    for (const { distance, side } of RIGS) {
      const room = { fromLens: mm(distance), seen: { width: mm(1.5 * side), height: mm(side) }, error: 0.005 };
      const asked = rectangleFor(degrees(0.3), room);
      expect(rms(asked * 1.1, distance, 0.005)).toBeLessThan(0.3);
      expect(rms(asked * 0.8, distance, 0.005)).toBeGreaterThan(0.3);
    }
  });

  it('with 0.5 % on each length 0.3° is reached in the pictures of 14 mm lenses only; the others are sent to the mirror', () => {
    const reached = RIGS.filter(({ distance, side }) => rms(side, distance, 0.005) < 0.3);
    expect(reached).toEqual(RIGS.slice(0, 3));
    for (const { distance, side } of RIGS.slice(3)) {
      const tilt = value(tiltFromSides({ left: 1, right: 1, top: 1, bottom: 1 }, rectangle(side, side, distance), 0.005));
      const room = { fromLens: mm(distance), seen: { width: mm(1.5 * side), height: mm(side) }, error: 0.005 };
      expect(judgeTilt(tilt, degrees(0.3), room)).toEqual({ verdict: 'cannot tell', finer: { by: 'the mirror alone' } });
    }
  });

  it('where a larger rectangle would tell, its size is said', () => {
    const tilt = value(tiltFromSides({ left: 1, right: 1, top: 1, bottom: 1 }, rectangle(150, 150, 4165), 0.005));
    const room = { fromLens: mm(4165), seen: { width: mm(1764), height: mm(1176) }, error: 0.005 };
    expect(judgeTilt(tilt, degrees(8), room)).toEqual({ verdict: 'cannot tell', finer: { by: 'marks', apart: expect.closeTo(844, 0) } });
  });

  it('a small target at fifty focal lengths shows degrees at best, even with 0.2 %', () => {
    expect(rms(186, 4165, 0.002)).toBeGreaterThan(3);
  });

  it.each([
    [1000, 1400, 0.005],
    [1700, 4165, 0.002],
    [186, 1000, 0.001],
  ])('the uncertainty given is the one found (%d mm at %d mm, error %f)', (width, distance, error) => {
    const { uncertainty } = value(tiltFromSides({ left: 100, right: 100, top: 100, bottom: 100 }, rectangle(width, width, distance), error));
    expect(rms(width, distance, error) / uncertainty).toBeGreaterThan(0.85);
    expect(rms(width, distance, error) / uncertainty).toBeLessThan(1.15);
  });

  it('turns away the edge that stands nearer', () => {
    const tilt = (sideways: number, leaning: number) => value(tiltFromSides(seen(300, 300, 900, sideways, leaning), rectangle(300, 300, 900), 0));
    expect(nearerEdges(tilt(3, 0))).toEqual(['left']);
    expect(nearerEdges(tilt(-3, 0))).toEqual(['right']);
    expect(nearerEdges(tilt(0, 3))).toEqual(['top']);
    expect(nearerEdges(tilt(-3, -3))).toEqual(['right', 'bottom']);
  });

  it('judges square, turn, or cannot tell by the uncertainty', () => {
    const judged = (sideways: number, error: number) =>
      judgeTilt(value(tiltFromSides(seen(300, 300, 900, sideways, 0), rectangle(300, 300, 900), error)), degrees(2));
    expect(judged(0.5, 0.001).verdict).toBe('square');
    expect(judged(5, 0.001)).toEqual({ verdict: 'turn', away: ['left'] });
    expect(judged(2, 0.005)).toEqual({ verdict: 'cannot tell', finer: { by: 'a larger rectangle' } });
  });

  it('a side of nothing, or sides that cannot be, are refused', () => {
    const sides = { left: 100, right: 0, top: 100, bottom: 100 };
    expect(fault(tiltFromSides(sides, rectangle(300, 300, 900), 0.005))).toEqual({ is: 'no sides' });
    expect(fault(tiltFromSides({ ...sides, right: 40 }, rectangle(300, 300, 900), 0.005))).toEqual({ is: 'tilt too large', most: 30 });
  });
});

describe('tilt from the mirror', () => {
  it('offset and tilt are each other’s inverse, for the reflection and for the returning spot', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), fc.double({ min: 10, max: 800, noNaN: true }), (tilt, f) => {
        expect(value(tiltFromMirror(mm(f), mirrorOffset(mm(f), degrees(tilt))))).toBeCloseTo(tilt, 9);
        expect(value(tiltFromSpot(mm(f * 50), spotOffset(mm(f * 50), degrees(tilt))))).toBeCloseTo(tilt, 9);
      }),
    );
  });

  it('1° of an 85 mm lens is 247 pixels of 6 µm off the middle', () => {
    expect(value(tiltFromMirror(mm(85), pixelsOnSensor(247.3, mm(0.006))))).toBeCloseTo(1, 3);
  });

  it('an offset larger than any picture is refused, and so is a spot that comes back from nowhere', () => {
    expect(fault(tiltFromMirror(mm(50), mm(900)))).toEqual({ is: 'offset beyond the picture' });
    expect(fault(tiltFromSpot(mm(4000), mm(-3)))).toEqual({ is: 'no spot' });
  });
});

describe('the allowed tilt', () => {
  it('grows with the f-number and shrinks with the AF area', () => {
    const allowed = (n: number, area: number) => allowedTilt({ aperture: fNumber(n), confusion: mm(0.03) }, USUAL_STEP_WORTH, mm(area), magnification(1 / 49));
    expect(allowed(2.8, 4)).toBeGreaterThan(allowed(1.4, 4));
    expect(allowed(1.4, 4)).toBeLessThan(allowed(1.4, 2));
  });

  it('is an angle, and millimetres across the target', () => {
    expect(depthAcross(degrees(-2), mm(180))).toBeCloseTo(6.28, 2);
  });
});
