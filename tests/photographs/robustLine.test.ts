// Contract of the robust line: where nothing is far off it is plain least squares with its variances; it knows no unit, and one wild point counts
// for nothing.
import { describe, expect, test } from 'vitest';
import { robustLine, type MeasuredPoint } from '../../src/photographs/robustLine.ts';

/** At -2 to 2, twice each, off by as much up as down: neither slope nor height moves. */
const points = (off: number, doubt: number, more: readonly MeasuredPoint[] = []): MeasuredPoint[] => [
  ...[-2, -1, 0, 1, 2, 2, 1, 0, -1, -2].map((x, at) => ({ x, y: 3 + 2 * x + (at < 5 ? off : -off), doubt })),
  ...more,
];

describe('a robust line', () => {
  test('through points that are nearer than they were known is that of least squares', () => {
    const line = robustLine(points(0.01, 1))!;
    expect([line.intercept, line.slope]).toEqual([3, 2].map((value) => expect.closeTo(value, 9)));
    // Ten squares of 0.0001 over eight; over ten points, and over 20 squares of x.
    expect(line.variance.intercept).toBeCloseTo(0.001 / 8 / 10, 8);
    expect(line.variance.slope / (0.001 / 8 / 20)).toBeCloseTo(1, 2);
    expect(line.variance.intercept / line.variance.slope).toBeCloseTo(2, 6);
    expect(line.variance.both).toBeCloseTo(0, 9);
    expect([line.freedom, line.scatter]).toEqual([8, 1]);
    expect(Math.min(...line.weights)).toBeGreaterThan(0.999);
  });

  test('has the scatter of the points where they lie farther off than they were known: 1.48 times the median, widened for few', () => {
    const line = robustLine(points(1, 0.1))!;
    expect(line.scatter).toBeCloseTo(1.4826 * (1 + 5 / 8), 6);
    // All lie 1 off, in units of the scatter and of where a point counts no more: 1 / (2.409 times 4.685).
    const own = 1 / (line.scatter ** 2 - 0.01 + 0.01);
    for (const weight of line.weights) expect(weight).toBeCloseTo((1 - own / 4.685 ** 2) ** 2, 6);
  });

  test('knows no unit and no origin', () => {
    const plain = robustLine(points(1, 0.1))!;
    const scaled = robustLine(points(1, 0.1).map(({ x, y, doubt }) => ({ x: 10 * x + 50, y: -3 * y, doubt: 3 * doubt })))!;
    expect(scaled.slope).toBeCloseTo(-0.3 * plain.slope, 9);
    expect(scaled.intercept).toBeCloseTo(-3 * plain.intercept - 50 * scaled.slope, 9);
    expect([scaled.scatter, scaled.variance.slope]).toEqual([3 * plain.scatter, 0.09 * plain.variance.slope].map((value) => expect.closeTo(value, 9)));
    expect(scaled.freedom).toBe(plain.freedom);
    // The middle lies at 50, the squares are a hundred times as large.
    expect(scaled.variance.both / scaled.variance.slope).toBeCloseTo(-50, 6);
  });

  test('leaves a wild point out, and counts it off its freedom', () => {
    const wild = robustLine(points(0.1, 0.1, [{ x: 1.5, y: 90, doubt: 0.1 }]))!;
    expect([wild.intercept, wild.slope]).toEqual([3, 2].map((value) => expect.closeTo(value, 6)));
    expect(wild.weights.at(-1)).toBe(0);
    expect(wild.freedom).toBe(8);
  });

  test('wants four points at two places', () => {
    expect(robustLine(points(0.1, 0.1).slice(0, 3))).toBeNull();
    expect(robustLine(points(0.1, 0.1).slice(0, 4))).not.toBeNull();
    expect(robustLine(points(0.1, 0.1).slice(0, 4))?.freedom).toBe(2);
  });
});
