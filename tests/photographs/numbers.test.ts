// Contracts of the small arithmetic under the reading of a photograph, each by hand or from a closed form.
import { describe, expect, test } from 'vitest';
import { frameOf, seenFrom, turnedQuad } from '../../src/photographs/frame.ts';
import { halfContrast } from '../../src/photographs/halfContrast.ts';
import { leastSquares } from '../../src/photographs/leastSquares.ts';
import { solveLinear } from '../../src/photographs/linearSystem.ts';
import { affineAt } from '../../src/photographs/localScale.ts';
import { medianOf } from '../../src/photographs/median.ts';
import { fitNormalSum, type NormalSum } from '../../src/photographs/normalSum.ts';
import { normalBelow, normalHeight } from '../../src/photographs/normalCurve.ts';
import { halve } from '../../src/photographs/shrink.ts';
import { straightLine } from '../../src/photographs/straightLine.ts';
import { studentBelow, studentQuantile } from '../../src/photographs/studentT.ts';
import { markCorners } from '../../src/optics/print/marks.ts';
import { LEANS, MARK_BOX } from '../../src/optics/print/marks.ts';

describe('linear equations', () => {
  test('are solved whatever the order of the rows, and left as they were', () => {
    const rows = [[0, 2, 1], [1, -1, 0], [3, 0, -1]]; // prettier-ignore
    // x = 2, y = 1, z = 4
    expect(solveLinear(rows, [6, 1, 2])).toEqual([expect.closeTo(2, 12), expect.closeTo(1, 12), expect.closeTo(4, 12)]);
    expect(rows).toEqual([[0, 2, 1], [1, -1, 0], [3, 0, -1]]); // prettier-ignore
  });

  test('that say the same twice have no answer, however large or small they are written', () => {
    expect(solveLinear([[2, 1], [4, 2]], [1, 2])).toBeNull(); // prettier-ignore
    expect(solveLinear([[1, 1], [1, 1 + 1e-13]], [1, 2])).toBeNull(); // prettier-ignore
    expect(solveLinear([[1, 0], [0, 1e-13]], [1, 1e-13])).toEqual([1, 1]); // prettier-ignore
  });

  test('more than there are unknowns are met best by the mean', () => {
    expect(leastSquares([1, 2, 6].map((is) => ({ row: [1], is })))).toEqual([3]);
    // Through (0, 1), (1, 3), (2, 5), (3, 7).
    expect(leastSquares([0, 1, 2, 3].map((x) => ({ row: [1, x], is: 1 + 2 * x })))).toEqual([expect.closeTo(1, 9), expect.closeTo(2, 9)]);
  });
});

test('the median is the middle one, or between the two in the middle', () => {
  expect([[3, 1, 2], [4, 1, 3, 2], [7], [2, 10]].map(medianOf)).toEqual([2, 2.5, 7, 6]);
});

test('half a picture is the mean of four, without an odd row or column', () => {
  const light = Float32Array.of(1, 2, 5, 6, 99, 3, 6, 7, 10, 99, 99, 99, 99, 99, 99);
  expect(halve({ width: 5, height: 3, light })).toEqual({ width: 2, height: 1, light: Float32Array.of(3, 7) });
});

describe('half of the contrast', () => {
  test('is the first crossing', () => {
    expect(halfContrast((frequency) => 1 - frequency)).toBeCloseTo(0.5, 6);
    expect(halfContrast((frequency) => Math.abs(Math.cos(Math.PI * 2 * frequency)))).toBeCloseTo(1 / 6, 6);
    expect(halfContrast((frequency) => (frequency < 0.123 ? 0.51 : 0.5))).toBeCloseTo(0.123, 6);
  });

  test('is none where it stays above, or is no number', () => {
    expect(halfContrast(() => 0.51)).toBeNull();
    expect(halfContrast((frequency) => (frequency > 0.76 ? 0 : 1))).toBeNull();
    expect(halfContrast((frequency) => (frequency > 0.73 ? 0 : 1))).toBeCloseTo(0.73, 6);
    expect(halfContrast(() => NaN)).toBeNull();
  });
});

describe('near one point a homography', () => {
  const near = (matrix: readonly number[], x = 0, y = 0) => affineAt(matrix as never, { x, y });
  test('turns and grows', () => {
    const [cos, sin] = [3 * Math.cos(0.5), 3 * Math.sin(0.5)];
    const at = near([cos, -sin, 7, sin, cos, -2, 0, 0, 1]);
    expect(at.scale).toBeCloseTo(3, 9);
    expect(at.turn).toBeCloseTo(0.5, 9);
    expect(at.tilt).toBeCloseTo(0, 4);
  });

  test('narrows by the cosine of the tilt, either way', () => {
    expect(near([1, 0, 0, 0, 0.5, 0, 0, 0, 1])).toMatchObject({ scale: Math.SQRT1_2, turn: 0, tilt: expect.closeTo(60, 9) });
    expect(near([0.5, 0, 0, 0, 1, 0, 0, 0, 1]).tilt).toBeCloseTo(60, 9);
  });

  test('shrinks what is farther away', () => {
    // At x = 5 the third row makes 1.5: 1 - 0.1 times 3.3333 over 1.5 across, 1 over 1.5 down.
    const across = near([1, 0, 0, 0, 1, 0, 0.1, 0, 1], 5, 0);
    expect(across.scale).toBeCloseTo(Math.sqrt((0.6666667 / 1.5) * (1 / 1.5)), 6);
    expect(across.tilt).toBeCloseTo(48.1897, 3);
    const down = near([1, 0, 0, 0, 1, 0, 0, 0.1, 1], 0, 5);
    expect(down.scale).toBeCloseTo(across.scale, 9);
    // Beside the axis rows lean: at (5, 5), u = v = 3.3333, so that across gives (0.4444, -0.2222).
    expect(near([1, 0, 0, 0, 1, 0, 0.1, 0, 1], 5, 5).turn).toBeCloseTo(Math.atan2(-0.3333333, 0.6666667), 6);
    expect(near([1, 0, 0, 0, 1, 0, 0, 0.1, 1], 5, 5).scale).toBeCloseTo(near([1, 0, 0, 0, 1, 0, 0.1, 0, 1], 5, 5).scale, 9);
  });
});

describe('from a mark', () => {
  const kinds = ['target', 'ramp'] as const;
  test.each(kinds)('of the %s its print is seen in its own units, wherever and however it lies', (kind) => {
    // In millimetres a unit is 2; the picture turns, stretches and moves it.
    const [middle, unit] = [{ x: 40, y: 30 }, 2];
    const seen = ({ x, y }: { x: number; y: number }) => ({ x: 100 + 3 * x - y, y: 50 + 0.5 * x + 2 * y });
    const [a, b, c, d] = markCorners({ middle, box: unit * MARK_BOX, lean: LEANS[kind] }).map(seen);
    const frame = frameOf(kind, [a!, b!, c!, d!]);
    const at = seenFrom(frame, seen({ x: middle.x + 5 * unit, y: middle.y - 3 * unit }));
    expect(at.x).toBeCloseTo(5, 6);
    expect(at.y).toBeCloseTo(-3, 6);
    expect(frame.right.x).toBeCloseTo(3 * unit, 6);
    expect(frame.down.y).toBeCloseTo(2 * unit, 6);
  });

  test('a quarter of a turn begins with the next corner', () => {
    const [a, b, c, d] = [0, 1, 2, 3].map((x) => ({ x, y: 0 }));
    const first = (quarters: number) => turnedQuad([a!, b!, c!, d!], quarters).map(({ x }) => x);
    expect([0, 1, 2, 3, 4].map(first)).toEqual([[0, 1, 2, 3], [1, 2, 3, 0], [2, 3, 0, 1], [3, 0, 1, 2], [0, 1, 2, 3]]); // prettier-ignore
  });
});

describe('a straight line', () => {
  test('weighs its points, and says how sure its numbers are', () => {
    const line = straightLine([{ x: 0, y: 0, weight: 1 }, { x: 2, y: 4, weight: 3 }])!; // prettier-ignore
    expect([line.intercept, line.slope]).toEqual([expect.closeTo(0, 12), expect.closeTo(2, 12)]);
    // The middle is 1.5, the squares about it 2.25 + 3 times 0.25 = 3.
    expect(line.unit).toEqual({ intercept: expect.closeTo(1, 12), slope: expect.closeTo(1 / 3, 12), both: expect.closeTo(-0.5, 12) });
  });
});

// M. G. Kendall & A. Stuart, The Advanced Theory of Statistics (from memory): with one, two and three degrees of freedom t has closed forms.
test.each([-3, -0.7, 0, 0.2, 1, 2.5, 12])('the share of all t below %s is that of the closed forms', (t) => {
  expect(studentBelow(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 11);
  expect(studentBelow(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 11);
  const u = t / Math.sqrt(3);
  expect(studentBelow(t, 3)).toBeCloseTo(0.5 + (u / (1 + u * u) + Math.atan(u)) / Math.PI, 11);
  expect(studentBelow(t, 4)).toBeCloseTo(0.5 + (t / Math.sqrt(4 + t * t)) * (0.75 - t ** 2 / (4 * (4 + t * t))) , 11); // prettier-ignore
});

test('the value that a share lies below is found to the end, also far out', () => {
  expect(studentQuantile(0.75, 1)).toBeCloseTo(1, 12);
  expect(studentQuantile(0.5, 1)).toBeCloseTo(0, 12);
  expect(studentQuantile(0.25, 1)).toBeCloseTo(-1, 12);
  expect(studentQuantile(0.999, 1) / Math.tan(Math.PI * 0.499)).toBeCloseTo(1, 9);
});

describe('the normal curve', () => {
  test('has a fifth of its height at 1.8 and half of it all below 0', () => {
    expect(normalHeight(0)).toBeCloseTo(0.3989423, 7);
    expect(normalHeight(1)).toBeCloseTo(0.2419707, 7);
    // M. Abramowitz & I. A. Stegun, Table 26.1.
    expect([0, 0.5, 2, 3].map((x) => normalBelow(x))).toEqual([0.5, 0.6914625, 0.9772499, 0.9986501].map((share) => expect.closeTo(share, 6)));
    expect(normalBelow(-0.5)).toBeCloseTo(0.3085375, 6);
  });

  test('is found again beside an edge, with all five numbers', () => {
    const truth: NormalSum = [0.1, 0.7, 0.4, Math.log(1.6), 0.3];
    const [along, across] = [new Float64Array(231), new Float64Array(231)];
    for (let at = 0; at < 231; at++) [along[at], across[at]] = [(Math.floor(at / 21) - 5) / 5, ((at % 21) - 10) / 1.5];
    const light = along.map((place, at) => truth[0] + truth[1] * normalBelow((across[at]! - truth[2] - truth[4] * place) / Math.exp(truth[3])));
    const samples = { count: 231, along, across, light };
    const fit = fitNormalSum(samples, [0, 1, 0, 0, 0])!;
    for (const [index, value] of truth.entries()) expect(fit.parameters[index]).toBeCloseTo(value, 5);
    expect(fit.uncertain).toBeLessThan(1e-5);
    expect(fitNormalSum({ ...samples, across: across.map(() => 0), along: along.map(() => 0) }, [0, 1, 0, 0, 0])).toBeNull();
  });

  test('is as uncertain as the light is rough', () => {
    // The same edge with the light off by 0.01, up and down in turn along it: the spread of what comes out in many such draws is what is stated.
    const [along, across] = [new Float64Array(231), new Float64Array(231)];
    for (let at = 0; at < 231; at++) [along[at], across[at]] = [(Math.floor(at / 21) - 5) / 5, ((at % 21) - 10) / 1.5];
    let seed = 1;
    const rough = (): number => ((seed = (seed * 16807) % 2147483647) / 2147483647 - 0.5) * 0.02 * Math.sqrt(3);
    const fits = Array.from({ length: 200 }, () => {
      const light = across.map((x) => 0.1 + 0.7 * normalBelow(x / 1.6) + rough());
      return fitNormalSum({ count: 231, along, across, light }, [0, 1, 0, 0, 0])!;
    });
    const logs = fits.map(({ parameters }) => parameters[3]);
    const mean = logs.reduce((sum, log) => sum + log, 0) / 200;
    const deviation = Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / 199);
    const stated = fits.reduce((sum, { uncertain }) => sum + uncertain, 0) / 200;
    // The deviation of 200 draws is known to a twentieth.
    expect(stated / deviation).toBeGreaterThan(0.85);
    expect(stated / deviation).toBeLessThan(1.15);
  });
});
