// Numbers of the straight lines, the systems under them and the curves of chance, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { halfContrast } from '../../src/photographs/halfContrast.ts';
import { leastSquares } from '../../src/photographs/leastSquares.ts';
import { solveLinear } from '../../src/photographs/linearSystem.ts';
import { medianOf } from '../../src/photographs/median.ts';
import { normalBelow, normalHeight } from '../../src/photographs/normalCurve.ts';
import { robustLine } from '../../src/photographs/robustLine.ts';
import { straightLine } from '../../src/photographs/straightLine.ts';
import { studentBelow, studentQuantile } from '../../src/photographs/studentT.ts';
import { around, doubtOf } from '../../src/photographs/withInterval.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';

const FREEDOMS = [0.6, 1, 1.5, 2, 3.7, 10, 101, 1e6, 1.5e6, 3e6];

test("Student's t: shares below and the values for them", () => {
  const told = () => {
    const below = FREEDOMS.map((freedom) => [-40, -2.5, -1, -0.3, 0, 0.2, 0.9, 1.4, 3, 11].map((t) => studentBelow(t, freedom)));
    const quantiles = FREEDOMS.map((freedom) => [1e-6, 0.025, 0.3, 0.5, 0.62, 0.9, 0.975, 0.9999].map((share) => studentQuantile(share, freedom)));
    return { below, quantiles };
  };
  expect(kept(told)).toMatchSnapshot();
});

test("Student's t ends where a share is nearly all, and at no or endless distance", () => {
  const told = () => [
    studentQuantile(1 - 1e-10, 1),
    studentQuantile(1 - 1e-13, 1),
    studentBelow(0, 3),
    studentBelow(-5, 1_000_000.5),
    studentBelow(Infinity, 3),
    studentBelow(-Infinity, 3),
  ];
  expect(kept(told)).toMatchSnapshot();
});

test('the normal curve', () => {
  const told = () => {
    const places = [-6, -3, -1.2, -0.4, -1e-3, 0, 1e-3, 0.7, 1.96, 2.6, 5];
    return [places.map((x) => normalBelow(x)), places.map((x) => normalBelow(x, 0.3)), places.map(normalHeight)];
  };
  expect(kept(told)).toMatchSnapshot();
});

test('medians of odd and even counts', () => {
  expect([[3], [3, 1], [5, 1, 2], [4, 9, 1, 2], [7, 7, 1, 0, 3]].map(medianOf)).toEqual([3, 2, 2, 3, 3]);
});

test('small systems are solved, with the largest pivot first, and not where rows say the same', () => {
  const told = () => {
    const random = seededRandom(21);
    const solved = [1, 2, 3, 5].map((size) =>
      solveLinear(
        Array.from({ length: size }, () => Array.from({ length: size }, () => random() - 0.5)),
        Array.from({ length: size }, random),
      ),
    );
    const small = (by: number) => solveLinear([[1, 2], [1, 2 + by]], [3, 4]); // prettier-ignore
    const hard = [
    solveLinear([[0, 2, 1], [3, 0, 1], [1, 1, 0]], [1, 2, 3]),
    solveLinear([[1e-9, 1], [1, 1]], [1, 2]),
    solveLinear([[1, 1], [1e-17, 1]], [1, 2]),
    solveLinear([[1e-12, 1], [0, 1]], [1, 2]),
    solveLinear([[0, 0], [0, 1]], [1, 1]),
    solveLinear([[1, 1], [2, 2]], [1, 2]),
    small(1e-12), small(3e-12), small(5e-12), small(1e-11),
    solveLinear([[1, -3], [-1, 3 + 4e-12]], [1, 2]),
  ]; // prettier-ignore
    return [solved, hard];
  };
  expect(kept(told)).toMatchSnapshot();
});

test('least squares over more equations than unknowns', () => {
  const told = () => {
    const random = seededRandom(22);
    const equations = Array.from({ length: 9 }, () => ({ row: [random(), random() - 0.5, 1], is: random() }));
    return [leastSquares(equations), leastSquares(equations.slice(0, 2)), leastSquares([]), leastSquares([{ row: [2], is: 3 }])];
  };
  expect(kept(told)).toMatchSnapshot();
});

test('a straight line and what is known of it', () => {
  const told = () => {
    const random = seededRandom(23);
    const lines = [2, 3, 7].map((count) => straightLine(Array.from({ length: count }, () => ({ x: 4 + random(), y: 3 * random(), weight: 0.2 + random() }))));
    // The squares of two points about x: half the square of their distance, times the weight.
    const near = [2, 2.8, 3.2, 4.4, 6].map((apart) => [0, 3, 1000].map((x) => straightLine([{ x, y: 1, weight: 1 }, { x: x + apart * 1e-6 * Math.hypot(1, x), y: 2, weight: 1 }]) !== null)); // prettier-ignore
    // Exactly at the bound, which is left out.
    const bound = straightLine([-1e-6, 1e-6].map((x) => ({ x, y: x, weight: 1 })));
    return { lines, near, bound };
  };
  expect(kept(told)).toMatchSnapshot();
});

test('a line through shots of which some lie far off', () => {
  const told = () => {
    const random = seededRandom(24);
    const rows = Array.from({ length: 60 }, (_, set) => {
      const count = 3 + (set % 9);
      const points = Array.from({ length: count }, (_each, at) => ({
        x: set % 5 === 4 ? 4 * Math.floor(at / 2) - 8 : 3 * at - 7,
        y: 2 + 1.3 * at + normal(random, 0, 0.6) + (at === 1 ? 0.35 * (set % 23) : 0) - (at === 4 ? 0.2 * (set % 17) : 0),
        doubt: set % 3 === 0 ? 0 : 0.2 + random() * (set % 4),
      }));
      const line = robustLine(points);
      return (
        line && [line.intercept, line.slope, line.variance.intercept, line.variance.slope, line.variance.both, line.freedom, line.scatter, ...line.weights]
      );
    });
    return rows;
  };
  expect(kept(told)).toMatchSnapshot();
});

test('a line needs four shots, two places, and holds where all lie on it', () => {
  const told = () => {
    const line = (xs: readonly number[], ys: readonly number[]) => robustLine(xs.map((x, index) => ({ x, y: ys[index]!, doubt: 0.1 })));
    const at = (...xs: readonly number[]) => robustLine(xs.map((x) => ({ x, y: 2 * x - 1, doubt: 0 })));
    return [
      at(),
      at(1, 2),
      at(1, 2, 3),
      at(1, 2, 3, 4),
      at(5, 5, 5, 5),
      at(1, 1, 1, 2),
      at(0, 0, 4, 4, 4),
      line([0, 1, 2, 3, 4], [0, 1, 2, 30, -30]),
      line([0, 0, 0, 1, 1], [0, 0, 0, 100, -100]),
    ];
  };
  expect(kept(told)).toMatchSnapshot();
});

test('where half the contrast is left', () => {
  const told = () => {
    const bell = (width: number) => halfContrast((f) => Math.exp(-((f / width) ** 2)));
    const steps = [0.5, 0.500001, 0.49].map((level) => halfContrast((f) => (f < 0.295 ? 1 : level)));
    const ends = [0.742, 0.749, 0.751, 0.76, 0.9, 2].map((end) => halfContrast((f) => 1 - f / (2 * end)));
    const wild = [
      halfContrast(() => Number.NaN),
      halfContrast(() => Infinity),
      halfContrast(() => 0),
      halfContrast((f) => (f < 0.1 ? Infinity : 0.2)),
      halfContrast((f) => Math.abs(Math.cos(9 * f))),
    ];
    return [[0.001, 0.01, 0.05, 0.31, 0.6].map(bell), steps, ends, wild];
  };
  expect(kept(told)).toMatchSnapshot();
});

test('intervals and the deviations they stand for', () => {
  const told = () => [around(3, 0.5), doubtOf({ value: 1, low: -2, high: 4 }), doubtOf(around(-1, 1.959964))];
  expect(kept(told)).toMatchSnapshot();
});
