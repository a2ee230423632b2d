// Contract of the pictures for the stores: each of them is there, as large as a store asks for and without alpha, and none is empty. What does not
// fit its frame is a fault of the making itself.
import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import type { Language } from '../../src/language.ts';
import { MADE, makePictures } from '../../store/pictures/pictures.ts';
import { pngPixels, type Pixels } from '../pngPixels.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** That with the longest words: the others differ in nothing but their sentences. */
const LANGUAGES: readonly Language[] = ['de'];
/** Of the picture's area: no picture is all ground, and none is so full that its ground is gone. */
const GROUND = { least: 0.15, most: 0.8 };
/** Of a plain picture with a sentence and a panel. */
const COLOURS = 50;

/** The share of the commonest colour, and how many there are; every third pixel of every third line tells it. */
function coloursOf({ width, height, at }: Pixels): { share: number; count: number } {
  const counts = new Map<string, number>();
  let all = 0;
  for (let y = 0; y < height; y += 3)
    for (let x = 0; x < width; x += 3) {
      const colour = String(at(x, y));
      counts.set(colour, (counts.get(colour) ?? 0) + 1);
      all += 1;
    }
  return { share: Math.max(...counts.values()) / all, count: counts.size };
}

test('every picture is whole and full', { timeout: 240_000 }, async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const paths = await makePictures(folder, LANGUAGES);
  const wanted = LANGUAGES.flatMap((language) => MADE.map(({ name }) => `${language}/${name}.png`));
  expect(paths.map((path) => relative(folder, path)).toSorted()).toEqual(wanted.toSorted());
  const faults = LANGUAGES.flatMap((language) =>
    MADE.flatMap(({ name, format }) => {
      const pixels = pngPixels(readFileSync(join(folder, language, `${name}.png`)));
      const { share, count } = coloursOf(pixels);
      const isWhole = pixels.width === format.width && pixels.height === format.height && !pixels.hasAlpha;
      const isFull = share > GROUND.least && share < GROUND.most && count > COLOURS;
      return isWhole && isFull ? [] : [`${language}, ${name}: ${pixels.width} × ${pixels.height}, ${Math.round(100 * share)}% of one colour, ${count} colours`];
    }),
  );
  expect(faults).toEqual([]);
  const sizes = MADE.map(({ format: { width, height } }) => `${width} × ${height}`);
  expect(new Set(sizes)).toEqual(new Set(['1280 × 800', '440 × 280', '1400 × 560']));
});
