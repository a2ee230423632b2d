// Numbers of the shapes and mappings that stand between pixels and prints, at their bounds and with odd things in them, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { cropAround } from '../../src/photographs/crop.ts';
import type { EdgeMeasure } from '../../src/photographs/edge.ts';
import { homographyFrom, robustHomography, through, type Homography, type PointPair } from '../../src/photographs/homography.ts';
import { dotLights, tellDots } from '../../src/photographs/markDots.ts';
import { measuredStep } from '../../src/photographs/measuredStep.ts';
import { motionIn } from '../../src/photographs/motion.ts';
import { wholePicture } from '../../src/photographs/pixelSource.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import type { Proof } from '../../src/photographs/proof.ts';
import { quadOf, type Quad } from '../../src/photographs/quad.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { kept } from '../kept/kept.ts';

const points = (...all: readonly (readonly [number, number])[]) => all.map(([x, y]) => ({ x, y }));
/** Corners of a shape that is filled. */
const filled = (area: number, ...outline: readonly (readonly [number, number])[]) => kept(() => quadOf({ area, outline: points(...outline) }));

test('a spot is a mark as far as its sides are alike and its corners not too round', () => {
  // Three quarters of the side opposite is enough, less is not; either way round.
  const trapezoid = (top: number, high: number) => [[0, 0], [4, 0], [top, high], [0, high]] as const; // prettier-ignore
  const turned = (top: number, high: number) => trapezoid(top, high).map(([x, y]) => [y, x] as const);
  for (const shape of [trapezoid, turned]) {
    expect(filled(17.5, ...shape(3, 5))).not.toBeNull();
    expect(filled(17.5, ...shape(2.9, 5))).toBeNull();
  }
  // Not less than 0.45 as high as wide.
  expect(filled(180, [0, 0], [20, 0], [20, 9], [0, 9])).not.toBeNull();
  expect(filled(180, [0, 0], [20, 0], [20, 8.9], [0, 8.9])).toBeNull();
  // Sides that bulge: 1.13 times as large a square would hold as much. Exactly that is too much.
  const bulging = (by: number) =>
    filled(1.3e8, [0, 0], [5000, -by], [10000, 0], [10000 + by, 5000], [10000, 10000], [5000, 10000 + by], [0, 10000], [-by, 5000]);
  expect([bulging(1384.5), bulging(1384.4) === null]).toEqual([null, false]);
  // What is nowhere as wide as one of its sides has no corners on both sides of it.
  expect(filled(40, [0, 0], [10, 0], [8.8, 4.5], [1.2, 4.5])).toBeNull();
  expect(filled(40, [4.5, 0], [4.5, 10], [0, 8.8], [0, 1.2])).toBeNull();
  // One corner is cut off, so that both ends of the cut lie as far off the diagonal.
  expect([
    filled(99.5, [0, 0], [9, 0], [10, 1], [10, 10], [0, 10]),
    filled(99.5, [0, 0], [10, 0], [10, 10], [1, 10], [0, 9]),
    filled(99, [1, 0], [10, 0], [10, 9], [9, 10], [0, 10], [0, 1]),
    filled(61.9, [0, 0], [10, 0], [10, 10], [0, 10]),
    filled(62, [0, 0], [10, 0], [10, 10], [0, 10]),
    filled(0, [3, 3]),
    filled(0, [3, 3], [5, 5], [9, 9], [4, 4]),
    filled(9, [0, 0], [3, 0], [6, 0], [0, 6]),
  ]).toMatchSnapshot();
});

const TILTED: Homography = [9, 1.5, 40, -1.2, 8, 45, 0.012, -0.007, 1];
const scattered = (count: number, seed: number): PointPair[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => {
    const from = { x: 6 * random() - 3, y: 6 * random() - 3 };
    const to = through(TILTED, from);
    return { from, to: { x: to.x + random() - 0.5, y: to.y + random() - 0.5 } };
  });
};

test('mappings of too few points, of points in one place, and of points just as far off as they may be', () => {
  const pairs = scattered(12, 71);
  const mapping = homographyFrom(pairs)!;
  const worst = Math.max(...pairs.map(({ from, to }) => { const at = through(mapping, from); return Math.hypot(at.x - to.x, at.y - to.y); })); // prettier-ignore
  expect(robustHomography(pairs, worst)?.kept.length).toBe(12);
  expect(robustHomography(pairs, worst * (1 - 1e-9))?.kept.length).toBe(11);
  const spot = (at: 'from' | 'to') => pairs.map((pair) => ({ ...pair, [at]: { x: 2, y: 3 } }));
  const few = Array.from({ length: 12 }, (_, seed) => scattered(seed % 4, 72 + seed));
  const line = pairs.map(({ to }, x) => ({ from: { x, y: 2 * x }, to }));
  const cases = [spot('from'), spot('to'), line, ...few];
  expect(cases.map((one) => [kept(() => homographyFrom(one)), kept(() => robustHomography(one, 9))])).toEqual(cases.map(() => [null, null]));
  expect(
    kept(() => [0.2, 0.35, 0.5].map((within) => [8, 9, 12].map((count) => robustHomography(pairs.slice(0, count), within)?.homography))),
  ).toMatchSnapshot();
});

/** Clouds, dark in the middle: nothing in it is like anything else. */
const clouded = (width: number, height: number, deep: number): Plane => {
  const random = seededRandom(73);
  return {
    width,
    height,
    light: Float32Array.from({ length: width * height }, (_, at) => {
      const [x, y] = [(at % width) - 40, Math.floor(at / width) - 45];
      return 0.5 + (Math.hypot(x, y) > 42 ? deep : 0) + 0.2 * deep * random();
    }),
  };
};

test('the dots of marks that are nowhere even, and of such as show next to nothing', () => {
  const quad = points([-3.9, -4], [3.8, -4.1], [4, 3.7], [-4.1, 4]).map((point) => through(TILTED, point)) as unknown as Quad;
  const nowhere = points([9, 9], [9, 9], [9, 9], [9, 9]) as unknown as Quad;
  const step = (by: number): Plane => ({
    width: 90,
    height: 90,
    light: Float32Array.from({ length: 8100 }, (_, at) => (Math.max(Math.abs((at % 90) - 44.5), Math.abs(Math.floor(at / 90) - 44.5)) < 30 ? 0.5 : 0.5 + by)),
  });
  const square = points([15, 15], [75, 15], [75, 75], [15, 75]) as unknown as Quad;
  expect([0.019, 0.021, 0.03, 0.06].map((by) => dotLights(step(by), square) === null)).toEqual([true, false, false, false]);
  expect(tellDots([0.5, 0.5])).toEqual({ are: 'read', dots: [false, false] });
  expect(
    kept(() => [
      dotLights(clouded(90, 95, 0.4), quad),
      kept(() => dotLights(clouded(90, 95, 0.4), nowhere)),
      [0.3, 0.06].map((deep) => dotLights(clouded(90, 95, deep), square)),
    ]),
  ).toMatchSnapshot();
});

test('a crop asks for the pixels it shows, and for no others', () => {
  const plane: Plane = { width: 9, height: 8, light: Float32Array.from({ length: 72 }, (_, at) => 0.0012 * at) };
  const asked: unknown[] = [];
  const picture = { ...wholePicture(plane), around: (box: unknown) => { asked.push(box); return plane; } }; // prettier-ignore
  const crops = [[4, 3, 4], [2.5, 5.5, 3], [8, 1, 5], [5, 1, 2]].map(([x = 0, y = 0, size = 1]) => cropAround(picture, { x, y }, size).rgba); // prettier-ignore
  expect([asked, crops.map((one) => one.join(' '))]).toMatchSnapshot();
});

const edge = (runs: EdgeMeasure['runs'], mtf50: number, factor = 1.01) =>
  ({ runs, mtf50, interval: { low: mtf50 / factor, high: mtf50 * factor } }) as unknown as EdgeMeasure;

test('motion is told from a quarter on, and only where the edges’ own doubt and scatter bear it out', () => {
  const [upright, level] = ['upright', 'level'] as const;
  const sets = [
    [], [edge(upright, 0.2)], [edge(level, 0.2)],
    [edge(upright, 0.2), edge(level, 0.249)], [edge(upright, 0.2), edge(level, 0.251)], [edge(upright, 0.3), edge(level, 0.2)],
    [edge(upright, 0.2, 1.4), edge(level, 0.3, 1.2)], [edge(upright, 0.2, 1.5), edge(level, 0.3, 1.2)], [edge(upright, 0.2, 1.3), edge(level, 0.3, 1.3)],
    [edge(upright, 0.2), edge(upright, 0.22), edge(level, 0.3)], [edge(upright, 0.2), edge(upright, 0.26), edge(level, 0.35)], [edge(upright, 0.2), edge(upright, 0.28), edge(level, 0.4)],
    [edge(upright, 0.2), edge(upright, 0.3), edge(level, 0.45)], [edge(upright, 0.3), edge(level, 0.19), edge(level, 0.21), edge(level, 0.24)],
    [edge(upright, 0.3), edge(level, 0.17), edge(level, 0.21), edge(level, 0.27)], [edge(upright, 0.2, 1.8), edge(upright, 0.2, 1.8), edge(level, 0.32)], [edge(upright, 0.2, 1.5), edge(upright, 0.2, 1.5), edge(level, 0.28)],
  ]; // prettier-ignore
  expect(sets.map((edges) => kept(() => motionIn(edges)))).toMatchSnapshot();
  // Edges of one way that scatter by more than the ways differ; then by a little less.
  expect(motionIn([edge(upright, 0.2), edge(upright, 0.32), edge(level, 0.36)]).is).toBe('alike');
  expect(motionIn([edge(upright, 0.2), edge(upright, 0.32), edge(level, 0.42)]).is).toBe('moved');
  // Exactly a quarter, with no doubt at all; and a doubt just as large as the difference.
  expect(motionIn([edge(upright, 1.25, 1), edge(level, 1, 1)]).is).toBe('moved');
  expect(motionIn([edge(upright, 1, 1), { ...edge(level, 4), interval: { low: 1, high: 16 } }]).is).toBe('alike');
});

test('a step is measured by a bracket in which it is worth more than nothing', () => {
  const bracket = (low: number) => ({ is: 'bracket', step: { value: 4, low, high: 8 } }) as unknown as Proof;
  const told = [[], [bracket(0)], [bracket(-1)], [bracket(0.5)], [bracket(2)]].map((proofs) => kept(() => measuredStep(proofs)) !== null);
  expect([told, kept(() => measuredStep([]))]).toEqual([[false, false, false, true, true], null]);
});
