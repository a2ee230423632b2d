// Contract of the dark spots: what is darker than 0.7 of the mean around it, gathered by its sides, of the size that was asked for, and
// nowhere at the border of the picture.
import { expect, test } from 'vitest';
import { darkSpots } from '../../src/photographs/darkSpots.ts';
import type { Plane } from '../../src/photographs/plane.ts';
import { seededRandom } from '../../src/practice/random.ts';

/** White, with what is drawn on it: boxes of pixels. */
function drawn(width: number, height: number, ...boxes: readonly (readonly [left: number, top: number, wide: number, high: number])[]): Plane {
  const light = new Float32Array(width * height).fill(1);
  for (const [left, top, wide, high] of boxes) for (let y = top; y < top + high; y++) for (let x = left; x < left + wide; x++) light[y * width + x] = 0;
  return { width, height, light };
}

test('a box is found with its pixels, and the ends of its rows', () => {
  expect(darkSpots(drawn(60, 50, [20, 30, 3, 2]), 2, 9)).toEqual([
    {
      area: 6,
      outline: [
        { x: 20, y: 30.5 },
        { x: 23, y: 30.5 },
        { x: 20, y: 31.5 },
        { x: 23, y: 31.5 },
      ],
    },
  ]);
});

test.each([
  ['as high as the least', 10, 30, 12, 10, 1],
  ['less high', 11, 30, 12, 10, 0],
  ['as wide as the least', 10, 30, 10, 12, 1],
  ['less wide', 11, 30, 10, 12, 0],
  ['as high as the most', 5, 12, 10, 12, 1],
  ['higher', 5, 11, 10, 12, 0],
  ['as wide as the most', 5, 12, 12, 10, 1],
  ['wider', 5, 11, 12, 10, 0],
])('a box %s', (_, least, most, wide, high, count) => {
  expect(darkSpots(drawn(80, 80, [30, 30, wide, high]), least, most)).toHaveLength(count);
});

test('what fills less than a third of the least square is none', () => {
  // Two strokes of two pixels, 12 long: 24 + 20 pixels of 48; then four more.
  const strokes = [[30, 30, 2, 12], [32, 30, 10, 2]] as const; // prettier-ignore
  expect(darkSpots(drawn(80, 80, ...strokes), 12, 20)).toEqual([]);
  expect(darkSpots(drawn(80, 80, ...strokes, [32, 32, 3, 1]), 12, 20)).toEqual([]);
  expect(darkSpots(drawn(80, 80, ...strokes, [32, 32, 4, 1]), 12, 20)).toMatchObject([{ area: 48 }]);
});

test.each([
  ['left', 0, 30],
  ['right', 70, 30],
  ['upper', 30, 0],
  ['lower', 30, 60],
])('a box at the %s border goes on outside; one pixel from it it does not', (_, left, top) => {
  expect(darkSpots(drawn(80, 70, [left, top, 10, 10]), 5, 20)).toEqual([]);
  const [inLeft, inTop] = [Math.min(69, Math.max(1, left)), Math.min(59, Math.max(1, top))];
  expect(darkSpots(drawn(80, 70, [inLeft, inTop, 10, 10]), 5, 20)).toHaveLength(1);
});

test('what touches by a corner is two, by a side one, whichever way round', () => {
  expect(darkSpots(drawn(80, 80, [30, 30, 5, 5], [35, 35, 5, 5]), 5, 20)).toHaveLength(2);
  expect(darkSpots(drawn(80, 80, [30, 30, 5, 5], [25, 35, 5, 5]), 5, 20)).toHaveLength(2);
  // A hook that goes back up, so that its last part is reached from below.
  const hook = drawn(80, 80, [30, 30, 2, 9], [30, 39, 9, 2], [37, 30, 2, 9]);
  expect(darkSpots(hook, 5, 20)).toMatchObject([{ area: 18 + 18 + 18 }]);
  const upsideDown = drawn(80, 80, [37, 30, 2, 9], [30, 39, 9, 2], [30, 25, 2, 14]);
  expect(darkSpots(upsideDown, 5, 20)).toMatchObject([{ area: 18 + 18 + 28 }]);
});

test('dark is darker than 0.7 of the mean of 28 pixels to every side, as far as the picture goes', () => {
  const [width, height] = [90, 75];
  const random = seededRandom(3);
  const light = Float32Array.from({ length: width * height }, (_, at) => 0.4 + 0.5 * random() + 0.004 * (at % width));
  // The mean, pixel by pixel, and pixels gathered by their neighbours.
  const dark = light.map((value, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    let [sum, count] = [0, 0];
    for (let v = Math.max(0, y - 28); v <= Math.min(height - 1, y + 28); v++)
      for (let u = Math.max(0, x - 28); u <= Math.min(width - 1, x + 28); u++) [sum, count] = [sum + light[v * width + u]!, count + 1];
    return value < (0.7 * sum) / count ? 1 : 0;
  });
  const areas: number[] = [];
  for (const [seed, is] of dark.entries()) {
    if (is !== 1) continue;
    const gathered = new Set([seed]);
    for (const at of gathered) {
      const x = at % width;
      for (const next of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) if (dark[next] === 1) gathered.add(next);
    }
    for (const at of gathered) dark[at] = 2;
    const inside = [...gathered].every((at) => at % width > 0 && at % width < width - 1 && at >= width && at < width * (height - 1));
    if (inside) areas.push(gathered.size);
  }
  expect(areas.length).toBeGreaterThan(100);
  expect(darkSpots({ width, height, light }, 1, 90).map(({ area }) => area)).toEqual(areas);
});
