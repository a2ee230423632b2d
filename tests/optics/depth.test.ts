import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthOfField, hyperfocal, limitsOfField, shareOfDepth } from '../../src/optics/depthOfField.ts';
import { airyShare, depthOfFocus } from '../../src/optics/depthOfFocus.ts';
import { fNumber, magnification } from '../../src/optics/quantity.ts';
import { bandWidth, stepAtSensor, stepAtTarget, USUAL_STEP_WORTH, type StepWorth } from '../../src/optics/stepWorth.ts';
import { millimetres as mm } from '../../src/units.ts';

const aperture = fc.double({ min: 0.95, max: 32, noNaN: true });
const focal = fc.double({ min: 10, max: 800, noNaN: true });
const circle = fc.double({ min: 0.005, max: 0.05, noNaN: true });
const multiple = fc.double({ min: 1.5, max: 400, noNaN: true });
const blur = (n: number, c: number) => ({ aperture: fNumber(n), confusion: mm(c) });
const number = (limit: number | 'infinite') => (limit === 'infinite' ? Number.POSITIVE_INFINITY : limit);

/** Of a thin lens focused at this distance from itself. */
const limits = (n: number, f: number, c: number, distance: number) =>
  limitsOfField(depthOfField(blur(n, c), magnification(f / (distance - f)), mm(f)), mm(distance));

describe('depth of field', () => {
  it('the subject lies between the near and the far limit', () => {
    fc.assert(
      fc.property(aperture, focal, circle, multiple, (n, f, c, times) => {
        const { near, far } = limits(n, f, c, f * times);
        expect(near).toBeGreaterThan(0);
        expect(near).toBeLessThan(f * times);
        expect(number(far)).toBeGreaterThan(f * times);
      }),
    );
  });

  it('the far limit is infinite exactly at and beyond the hyperfocal distance', () => {
    fc.assert(
      fc.property(aperture, focal, circle, fc.double({ min: 0.05, max: 3, noNaN: true }), (n, f, c, share) => {
        const H = hyperfocal(blur(n, c), mm(f));
        const distance = Math.max(H * share, f * 1.1);
        const { far } = limits(n, f, c, distance);
        // Within a thousandth of it, rounding decides.
        fc.pre(distance >= H || distance < H * 0.999);
        expect(far === 'infinite').toBe(distance >= H);
      }),
    );
  });

  it('a smaller aperture never shortens the depth, to either side', () => {
    fc.assert(
      fc.property(aperture, focal, circle, multiple, (n, f, c, times) => {
        const m = magnification(1 / (times - 1 + 1e-9));
        const open = depthOfField(blur(n, c), m, mm(f));
        const closed = depthOfField(blur(n * 1.4, c), m, mm(f));
        expect(closed.front).toBeGreaterThan(open.front);
        // Endless stays endless.
        expect(number(closed.behind) > number(open.behind) || closed.behind === 'infinite').toBe(true);
      }),
    );
  });

  it('an error as large as the depth on its side is a share of 1, and none behind an endless depth', () => {
    const depth = depthOfField(blur(1.8, 0.03), magnification(1 / 48), mm(85));
    expect(shareOfDepth(-depth.front, depth)).toBeCloseTo(1, 12);
    expect(shareOfDepth(number(depth.behind), depth)).toBeCloseTo(1, 12);
    expect(shareOfDepth(1e6, { ...depth, behind: 'infinite', total: 'infinite' })).toBe(0);
  });
});

describe('what a step is worth', () => {
  it('sixteen usual steps span the geometric depth of focus', () => {
    const at = blur(2.8, 0.03);
    expect(16 * stepAtSensor(at, USUAL_STEP_WORTH)).toBeCloseTo(depthOfFocus(at, 0), 12);
  });

  it('at the target a step is longer by one over the magnification squared', () => {
    const at = blur(1.4, 0.03);
    expect(stepAtTarget(at, USUAL_STEP_WORTH, magnification(0.02))).toBeCloseTo(stepAtSensor(at, USUAL_STEP_WORTH) * 2500, 9);
  });

  it.each([
    [1, 0.05, 'narrow'],
    [7, 0.125, 'plausible'],
    [30, 0.125, 'wide'],
  ] as const)('a band of %i values at %f is %s', (values, worth, looks) => {
    const band = bandWidth(values, worth as StepWorth);
    expect(band.looks).toBe(looks);
    expect(band.share).toBeCloseTo((values * worth) / 2, 12);
  });

  it('the Airy disc passes the circle of confusion at small apertures only', () => {
    expect(airyShare(blur(2.8, 0.0288))).toBeLessThan(0.2);
    expect(airyShare(blur(32, 0.0288))).toBeGreaterThan(1);
  });
});
