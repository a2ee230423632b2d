import { describe, expect, test } from 'vitest';
import { robustLine } from '../../src/photographs/robustLine.ts';
import { straightLine } from '../../src/photographs/straightLine.ts';

// NIST Statistical Reference Datasets, Linear Regression, Norris (ozone analysers; from memory, and the certified values come out of the points).
// prettier-ignore
const NORRIS = [
  [0.2, 0.1], [337.4, 338.8], [118.2, 118.1], [884.6, 888], [10.1, 9.2], [226.5, 228.1], [666.3, 668.5], [996.3, 998.5], [448.6, 449.1],
  [777, 778.9], [558.2, 559.2], [0.4, 0.3], [0.6, 0.1], [775.5, 778.1], [666.9, 668.8], [338, 339.3], [447.5, 448.9], [11.6, 10.8],
  [556, 557.7], [228.1, 228.3], [995.8, 998], [887.6, 888.8], [120.2, 119.6], [0.3, 0.3], [0.3, 0.6], [556.8, 557.6], [339.1, 339.3],
  [887.2, 888], [999, 998.5], [779, 778.9], [11.1, 10.2], [118.3, 117.6], [229.2, 228.9], [669.1, 668.4], [448.9, 449.2], [0.5, 0.2],
] as const;

describe('a straight line', () => {
  test('has the certified numbers of a reference dataset', () => {
    const line = straightLine(NORRIS.map(([x, y]) => ({ x, y, weight: 1 })))!;
    expect(line.intercept).toBeCloseTo(-0.262323073774029, 10);
    expect(line.slope).toBeCloseTo(1.00211681802045, 12);
    const variance = NORRIS.reduce((sum, [x, y]) => sum + (y - line.intercept - line.slope * x) ** 2, 0) / (NORRIS.length - 2);
    expect(Math.sqrt(variance)).toBeCloseTo(0.884796396144373, 10);
    expect(Math.sqrt(variance * line.unit.intercept)).toBeCloseTo(0.232818234301152, 10);
    expect(Math.sqrt(variance * line.unit.slope)).toBeCloseTo(0.000429796848199937, 12);
  });

  test('is none through points at one place', () => {
    expect(straightLine([1, 2].map((y) => ({ x: 3, y, weight: 1 })))).toBeNull();
    expect(robustLine([1, 2, 3, 4].map((y) => ({ x: 3, y, doubt: 0.1 })))).toBeNull();
  });

  test('fitted robustly stays with most points when one is far off, and says which', () => {
    const points = NORRIS.map(([x, y]) => ({ x, y, doubt: 0.1 }));
    const bent = [...points, { x: 500, y: 900, doubt: 0.1 }];
    const [line, same] = [robustLine(points)!, robustLine(bent)!];
    expect(line.slope).toBeCloseTo(1.00211681802045, 3);
    expect(same.slope).toBeCloseTo(line.slope, 4);
    expect(same.intercept).toBeCloseTo(line.intercept, 1);
    expect(same.weights.at(-1)).toBe(0);
  });

  test('fitted robustly goes through points that lie on one exactly', () => {
    const line = robustLine([-8, -4, 0, 4, 8].map((x) => ({ x, y: 3 + 2 * x, doubt: 0.1 })))!;
    expect([line.intercept, line.slope]).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
  });
});
