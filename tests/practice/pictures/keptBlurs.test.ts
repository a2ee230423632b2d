// Numbers of coverage and of every blur of the practice picture, kept to seven digits, so that a change of any constant or loop is noticed.
import { describe, expect, test } from 'vitest';
import { addPolygon, takeCoverage } from '../../../src/practice/pictures/coverage.ts';
import { defocus } from '../../../src/practice/pictures/depthBlur.ts';
import { binned, gaussianBlur, shaken } from '../../../src/practice/pictures/smooth.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { kept } from '../../kept/kept.ts';
import { summed } from '../../kept/summed.ts';

const lightOf = (width: number, height: number): Float32Array => {
  const random = seededRandom(width * 100 + height);
  return Float32Array.from({ length: width * height }, () => random());
};
const [WIDTH, HEIGHT] = [23, 17];
const light = lightOf(WIDTH, HEIGHT);
const sumOf = (work: () => ArrayLike<number>) => kept(() => summed(work()));

describe('blurs', () => {
  test('of a Gaussian', () => {
    expect([0.04, 0.05, 0.09, 0.3, 0.76, 1, 2.5, 6].map((deviation) => sumOf(() => gaussianBlur(light, WIDTH, HEIGHT, deviation)))).toMatchSnapshot('first');
    expect([sumOf(() => gaussianBlur(lightOf(1, 9), 1, 9, 1)), sumOf(() => gaussianBlur(lightOf(9, 1), 9, 1, 1))]).toMatchSnapshot('second');
  });

  test('of a shake', () => {
    const ways = [[0.1, 0], [0.15, 0], [2, 0], [0, 2], [3.3, -2.1], [-1.7, 0.4], [-9, 12], [0.06, 0.3]] as const; // prettier-ignore
    expect(ways.map(([x, y]) => sumOf(() => shaken(light, WIDTH, HEIGHT, { x, y })))).toMatchSnapshot();
  });

  test('into pixels', () => {
    expect(sumOf(() => binned(lightOf(24, 18), 24, 18, 2))).toMatchSnapshot('first');
    expect(sumOf(() => binned(lightOf(24, 18), 24, 18, 3))).toMatchSnapshot('second');
  });

  test('of discs, one for all', () => {
    const diameters = [0, 0.05, 0.59, 0.6, 0.9, 1, 1.05, 1.1, 1.2, 1.9, 2, 3, 3.05, 5.5, 9, 14.2, 40];
    expect(diameters.map((diameter) => sumOf(() => defocus(light, WIDTH, HEIGHT, () => diameter)))).toMatchSnapshot();
  });

  test('of discs that change with the place', () => {
    const discs = [
      (x: number, y: number) => 0.2 * x + 0.1 * y,
      (x: number, y: number) => Math.abs(x - 11) * Math.abs(y - 8) * 0.08,
      (x: number) => (x > 12 ? 4 : 1.5),
      (_: number, y: number) => 0.045 * y * y,
    ];
    expect(discs.map((disc) => sumOf(() => defocus(light, WIDTH, HEIGHT, disc)))).toMatchSnapshot('first');
    const sizes = [[1, 5], [4, 4], [5, 1], [8, 3], [9, 3]] as const; // prettier-ignore
    expect(sizes.map(([width, height]) => sumOf(() => defocus(lightOf(width, height), width, height, (x, y) => 1 + x / 3 + y / 5)))).toMatchSnapshot('second');
  });
});

describe('coverage', () => {
  const grid = { width: 13, height: 9 };
  const covered = (...polygons: readonly (readonly (readonly [number, number])[])[]): number[] => {
    const sums = new Float32Array((grid.width + 1) * grid.height);
    const pixels = Array.from({ length: grid.width * grid.height }, () => 0);
    for (const polygon of polygons) addPolygon(sums, grid, polygon.map(([x, y]) => ({ x, y }))); // prettier-ignore
    takeCoverage(sums, grid, (pixel, coverage) => (pixels[pixel] = coverage));
    return pixels;
  };

  test('of polygons by chance, in part outside', () => {
    const random = seededRandom(7);
    const polygons = Array.from({ length: 60 }, () => {
      const snapped = random() < 0.3;
      const at = (length: number): number => (snapped ? Math.round : Number)(-3 + random() * (length + 6));
      return Array.from({ length: 3 + Math.floor(random() * 4) }, () => [at(grid.width), at(grid.height)] as const);
    });
    expect(polygons.map((polygon) => sumOf(() => covered(polygon)))).toMatchSnapshot('first');
    expect(sumOf(() => covered(...polygons))).toMatchSnapshot('second');
  });

  test('of what crosses itself, of next to nothing, and at the borders', () => {
    // prettier-ignore
    const shapes = {
      bowTie: [[1, 1], [5, 5], [5, 1], [1, 5]],
      otherBowTie: [[1, 1], [1, 5], [5, 1], [5, 5]],
      thin: [[1, 1], [1.015, 1], [1.015, 1.01], [1, 1.01]],
      thinner: [[1, 1], [1.009, 1], [1.009, 1.01], [1, 1.01]],
      whole: [[0, 0], [13, 0], [13, 9], [0, 9]],
      lastPixel: [[12, 8], [13, 8], [13, 9], [12, 9]],
      slantedOut: [[11, -2], [15, 4], [11, 12]],
      slantedIn: [[2, -2], [-3, 4], [2, 12]],
    } as const;
    expect(Object.entries(shapes).map(([name, corners]) => [name, sumOf(() => covered(corners))])).toMatchSnapshot();
  });
});
