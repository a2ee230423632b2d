import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { homographyFrom, inverse, robustHomography, through, type Homography } from '../../src/photographs/homography.ts';

const anyHomography = fc
  .tuple(...Array.from({ length: 8 }, () => fc.double({ min: -1, max: 1, noNaN: true })))
  .map(([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0]): Homography => [3 + a, 0.5 * b, 500 * c, 0.5 * d, 3 + e, 500 * f, 3e-4 * g, 3e-4 * h, 1]);
const GRID = [-90, -30, 40, 100].flatMap((x) => [-120, -10, 75, 130].map((y) => ({ x, y })));

describe('a homography', () => {
  test('is found again from points that it moved, and its inverse moves them back', () => {
    fc.assert(
      fc.property(anyHomography, (truth) => {
        const found = homographyFrom(GRID.map((from) => ({ from, to: through(truth, from) })))!;
        for (const point of GRID) {
          const [is, was] = [through(found, point), through(truth, point)];
          expect(Math.hypot(is.x - was.x, is.y - was.y)).toBeLessThan(1e-6);
          const back = through(inverse(found), is);
          expect(Math.hypot(back.x - point.x, back.y - point.y)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  test('one point far off is left out, and the rest fits as if it had not been there', () => {
    fc.assert(
      fc.property(anyHomography, fc.nat(GRID.length - 1), (truth, bad) => {
        const pairs = GRID.map((from, index) => {
          const to = through(truth, from);
          return { from, to: index === bad ? { x: to.x + 9, y: to.y - 7 } : to };
        });
        const { homography, kept } = robustHomography(pairs, 0.5)!;
        const [is, was] = [through(homography, GRID[bad]!), through(truth, GRID[bad]!)];
        expect(Math.hypot(is.x - was.x, is.y - was.y)).toBeLessThan(1);
        expect(kept.length).toBeGreaterThan(GRID.length / 2);
      }),
    );
  });

  test('three points, or all in one line, make none', () => {
    const same = (points: readonly { x: number; y: number }[]) => homographyFrom(points.map((from) => ({ from, to: from })));
    expect(same(GRID.slice(0, 3))).toBeNull();
    expect(same([0, 1, 2, 3, 4].map((x) => ({ x, y: 2 * x })))).toBeNull();
  });
});
