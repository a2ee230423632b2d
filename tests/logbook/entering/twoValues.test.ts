import { describe, expect, it } from 'vitest';
import { twoValues } from '../../../src/logbook/entering/twoValues.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { bandAt } from './bands.ts';

const RANGE = { from: 24, to: 70 };

describe('one value for each end of a zoom', () => {
  it('serves each end by what was measured there, near and far', () => {
    const bands = [
      bandAt('wide near', -8, -4, { focalLength: 24 }),
      bandAt('wide far', -6, 0, { focalLength: 24, distance: 9000 }),
      bandAt('tele', 4, 8, { focalLength: 70 }),
    ];
    const both = twoValues(USUAL_SCALE, RANGE, bands, { by: 'worst share' });
    expect(both?.wide.value).toBe(-5);
    expect(both?.tele.value).toBe(6);
    expect(both?.middles).toEqual([]);
  });

  it('holds a measured middle against both laws', () => {
    const bands = [bandAt('wide', -6, -2, { focalLength: 24 }), bandAt('tele', 4, 8, { focalLength: 70 }), bandAt('middle', 2, 6, { focalLength: 50 })];
    const [middle] = twoValues(USUAL_SCALE, RANGE, bands, { by: 'worst share' })?.middles ?? [];
    expect(middle?.linear.value).toBeCloseTo(1.652, 3);
    expect(middle?.linear.inside).toBe(false);
    expect(middle?.logarithmic.value).toBeCloseTo(2.8567, 3);
    expect(middle?.logarithmic.inside).toBe(true);
  });

  it('is not given while one end was not measured', () => {
    expect(twoValues(USUAL_SCALE, RANGE, [bandAt('wide', -6, -2, { focalLength: 24 })], { by: 'worst share' })).toBeNull();
  });
});
