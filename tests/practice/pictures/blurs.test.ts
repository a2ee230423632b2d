// Contract of the blurs of the practice camera, on a single bright cell: where its light goes, and how much.
import { describe, expect, test } from 'vitest';
import { defocus } from '../../../src/practice/pictures/depthBlur.ts';
import { binned, gaussianBlur, shaken } from '../../../src/practice/pictures/smooth.ts';

const SIZE = 21;
const bright = (x: number, y: number): Float32Array => {
  const light = new Float32Array(SIZE * SIZE);
  light[y * SIZE + x] = 1;
  return light;
};
const sum = (light: Float32Array): number => light.reduce((total, value) => total + value, 0);
const even = new Float32Array(SIZE * SIZE).fill(0.5);

describe('a Gaussian', () => {
  const out = gaussianBlur(bright(10, 10), SIZE, SIZE, 1.2);
  const at = (x: number, y: number): number => out[(10 + y) * SIZE + 10 + x] ?? NaN;

  test('keeps the light and spreads it by its curve, across as down', () => {
    expect(sum(out)).toBeCloseTo(1, 5);
    expect(at(1, 0) / at(0, 0)).toBeCloseTo(Math.exp(-1 / 2.88), 4);
    expect(at(0, -2) / at(0, 0)).toBeCloseTo(Math.exp(-4 / 2.88), 4);
    expect(at(-2, 1) / at(0, 0)).toBeCloseTo(Math.exp(-5 / 2.88), 4);
  });

  test('reaches four deviations, rounded up', () => {
    expect([at(5, 0) > 0, at(6, 0), at(0, -5) > 0, at(0, -6)]).toEqual([true, 0, true, 0]);
  });

  test('goes on past the border as at it', () => {
    for (const value of gaussianBlur(even, SIZE, SIZE, 2)) expect(value).toBeCloseTo(0.5, 5);
    // Half of the curve and half of its middle lie on a cell in the corner, each way.
    const corner = gaussianBlur(bright(0, 20), SIZE, SIZE, 1.2);
    const middle = at(0, 0) ** 0.5;
    expect(corner[20 * SIZE]).toBeCloseTo((0.5 + middle / 2) ** 2, 4);
    const other = gaussianBlur(bright(20, 0), SIZE, SIZE, 1.2);
    expect(other[20]).toBeCloseTo((0.5 + middle / 2) ** 2, 4);
  });

  test('of a twentieth of a cell is begun, of less is none', () => {
    const light = bright(10, 10);
    expect(gaussianBlur(light, SIZE, SIZE, 0.049)).toBe(light);
    expect(gaussianBlur(light, SIZE, SIZE, 0.05)).not.toBe(light);
  });
});

describe('a shake', () => {
  test('of two cells is five places half a cell apart, the outer ones a cell off', () => {
    const row = (light: Float32Array): number[] => [...light.subarray(10 * SIZE + 8, 10 * SIZE + 13)].map((value) => Math.round(1e4 * value) / 1e4);
    expect(row(shaken(bright(10, 10), SIZE, SIZE, { x: 2, y: 0 }))).toEqual([0, 0.3, 0.4, 0.3, 0]);
    const down = shaken(bright(10, 10), SIZE, SIZE, { x: 0, y: 2 });
    expect([9, 10, 11].map((y) => Math.round(1e4 * (down[y * SIZE + 10] ?? 0)) / 1e4)).toEqual([0.3, 0.4, 0.3]);
  });

  test('goes along its way: downwards to the right light lies there, not across it', () => {
    const out = shaken(bright(10, 10), SIZE, SIZE, { x: 3, y: 3 });
    expect(out[11 * SIZE + 11]).toBeGreaterThan(0.05);
    expect(out[9 * SIZE + 11]).toBeLessThan(0.02);
    expect(sum(out)).toBeCloseTo(1, 5);
  });

  test('repeats the border, and of less than a tenth of a cell is none', () => {
    for (const value of shaken(even, SIZE, SIZE, { x: 5, y: -4 })) expect(value).toBeCloseTo(0.5, 5);
    // Of five places at the left border, those at -1 and -0.5 see it, too.
    expect(shaken(bright(0, 10), SIZE, SIZE, { x: 2, y: 0 })[10 * SIZE]).toBeCloseTo((1 + 1 + 1 + 0.5) / 5, 5);
    expect(shaken(bright(20, 10), SIZE, SIZE, { x: 2, y: 0 })[10 * SIZE + 20]).toBeCloseTo((1 + 1 + 1 + 0.5) / 5, 5);
    expect(shaken(bright(10, 0), SIZE, SIZE, { x: 0, y: 2 })[10]).toBeCloseTo(0.7, 5);
    expect(shaken(bright(10, 20), SIZE, SIZE, { x: 0, y: 2 })[20 * SIZE + 10]).toBeCloseTo(0.7, 5);
    const light = bright(1, 1);
    expect(shaken(light, SIZE, SIZE, { x: 0.06, y: 0.07 })).toBe(light);
    expect(shaken(light, SIZE, SIZE, { x: 0.08, y: 0.07 })).not.toBe(light);
  });
});

test('a pixel is the mean of its cells', () => {
  expect(binned(Float32Array.of(1, 2, 5, 6, 3, 6, 7, 10), 4, 2, 2)).toEqual(Float32Array.of(3, 7));
  expect(binned(Float32Array.of(0, 4, 8, 12, 1, 1, 1, 1), 2, 4, 2)).toEqual(Float32Array.of(6, 1));
});

describe('a disc', () => {
  // Of 3 cells: an area of 7.069 cells, half as wide as the mean of the root of 2.25 - y² over half a cell to either side: 1.4717.
  const out = defocus(bright(10, 10), SIZE, SIZE, () => 3);
  const at = (x: number, y: number): number => out[(10 + y) * SIZE + 10 + x] ?? NaN;

  test('spreads the light evenly over its area', () => {
    expect(sum(out)).toBeCloseTo(1, 4);
    expect(at(0, 0)).toBeCloseTo(1 / 7.069, 3);
    expect(at(0, 1)).toBeCloseTo(1 / 7.069, 3);
    expect(at(1, 0)).toBeCloseTo(0.9717 / 7.069, 3);
    expect(at(2, 0)).toBe(0);
    for (const [x, y] of [[1, 0], [1, 1], [0, 1]] as const) expect([at(-x, y), at(x, -y), at(-x, -y)]).toEqual(Array(3).fill(expect.closeTo(at(x, y), 6))); // prettier-ignore
  });

  test('that fits into a cell is none, one a little wider is, and of 20 reaches ten', () => {
    expect(defocus(bright(10, 10), SIZE, SIZE, () => 0.5)).toEqual(bright(10, 10));
    expect(defocus(bright(10, 10), SIZE, SIZE, () => 1.16)[10 * SIZE + 10]).toBeLessThan(0.99);
    const wide = defocus(bright(10, 10), SIZE, SIZE, () => 20);
    expect(wide[10 * SIZE + 10]).toBeCloseTo(1 / (Math.PI * 100), 5);
    expect(wide[10 * SIZE + 1]).toBeCloseTo(1 / (Math.PI * 100), 4);
    expect(wide[18 * SIZE + 18]).toBe(0);
  });

  test('is that of each cell’s own depth, asked for row by row and every fourth cell', () => {
    const stripes = Float32Array.from({ length: SIZE * SIZE }, (_, cell) => (cell % SIZE) % 2);
    const half = defocus(stripes, SIZE, SIZE, (x, y) => (x > 8 && y > 5 ? 4 : 0));
    const cells = Array.from({ length: SIZE * SIZE }, (_, cell) => ({ x: cell % SIZE, y: Math.floor(cell / SIZE), value: half[cell] ?? NaN }));
    expect(cells.filter(({ x, y, value }) => (x < 8 || y < 5) && value !== x % 2)).toEqual([]);
    expect(cells.filter(({ x, y, value }) => x >= 8 && x < SIZE - 3 && y > 5 && !(Math.abs(value - 0.5) < 0.2))).toEqual([]);
  });
});
