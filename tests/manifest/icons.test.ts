// Contract of the icons: each has the size that it is named for, the one of the stores has its margin, and the others fill their square.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { base } from '../../manifest/base.ts';
import { marginOf } from '../../icons/margin.ts';
import { pngPixels } from '../pngPixels.ts';

/** How much of a pixel must be there for it to be seen. */
const SEEN = 16;

test.each(Object.entries(base.icons))('the icon of %s px is as large as its name says, up to its margin and no further', (named, path) => {
  const side = Number(named);
  const { width, height, at } = pngPixels(readFileSync(path));
  expect([width, height]).toEqual([side, side]);
  const drawn = Array.from({ length: side * side }, (_, index) => [index % side, Math.floor(index / side)] as const).filter(
    ([x, y]) => (at(x, y)[3] ?? 255) >= SEEN,
  );
  const [across, down] = [drawn.map(([x]) => x), drawn.map(([, y]) => y)];
  const margin = marginOf(side);
  expect([Math.min(...across), Math.min(...down), Math.max(...across), Math.max(...down)]).toEqual([margin, margin, side - 1 - margin, side - 1 - margin]);
});

test('the largest has 96 px of its mark, and its middle is not empty', () => {
  const { at } = pngPixels(readFileSync(base.icons[128]));
  expect(128 - 2 * marginOf(128)).toBe(96);
  expect(at(64, 64)[3]).toBe(255);
  expect(new Set([at(64, 30), at(72, 53), at(64, 53)].map(String)).size).toBeGreaterThan(1);
});
