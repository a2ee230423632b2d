import { describe, expect, test } from 'vitest';
import { normalBelow } from '../../src/photographs/normalCurve.ts';
import { studentBelow, studentQuantile } from '../../src/photographs/studentT.ts';

describe('Student’s t', () => {
  // Any printed table of Student's t, two-sided 95 % and 99 % (e.g. NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2; from memory).
  test.each([
    [1, 12.706, 63.657],
    [2, 4.303, 9.925],
    [3, 3.182, 5.841],
    [5, 2.571, 4.032],
    [10, 2.228, 3.169],
    [30, 2.042, 2.75],
    [120, 1.98, 2.617],
  ])('has the printed quantiles with %d degrees of freedom', (freedom, at975, at995) => {
    expect(studentQuantile(0.975, freedom)).toBeCloseTo(at975, 3);
    expect(studentQuantile(0.995, freedom)).toBeCloseTo(at995, 3);
    expect(studentQuantile(0.025, freedom)).toBeCloseTo(-at975, 3);
  });

  test('with endless freedom is the normal curve', () => {
    expect(studentQuantile(0.975, 1e7)).toBeCloseTo(1.95996, 4);
    expect(studentBelow(1, 2e6)).toBeCloseTo(normalBelow(1), 6);
    // Abramowitz and Stegun, Table 26.1: P(1) = 0.8413447.
    expect(normalBelow(1)).toBeCloseTo(0.8413447, 6);
    expect(normalBelow(-2)).toBeCloseTo(0.0227501, 6);
  });
});
