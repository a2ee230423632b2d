// What is wrong with what a page shows, from the narrowest sidebar at twice the size of text to the side panel, in every theme that
// it wears: what axe finds, what is too wide, cut off or too small to be pressed, words that are broken or hard to read, and what
// shines in the dark. A picture of each is kept where it was asked for.
import type { Page } from 'puppeteer-core';
import { faultsBesideColours, contrastFaults } from './axe.ts';
import { cutIn } from './pseudo/cut.ts';
import { keep, openRoom, picture, wear, type Theme } from './screens.ts';
import { shineOf } from './shine.ts';
import { brokenWords, smallTargets, smallWords } from './sizes.ts';

const WIDTHS = [180, 240, 360] as const;
const WIDEST = 600;
/** Of a panel zoomed in far: a word may need two lines. */
const NARROWEST = 180;
/** A page in a tab is wider than the narrowest panel. */
const NARROWEST_TAB = 240;
const THEMES: readonly Theme[] = ['light', 'dark', 'dim', 'red', 'forced'];
/** What is printed is as light as paper in every theme that is chosen in the panel. */
const PAPER: readonly Theme[] = ['light', 'dark', 'forced'];

/** Of white's light, in the themes for a dark studio. */
const MOST_SHINE = 0.12;
/** WCAG 2.2, 1.4.6. */
const FAR_CONTRAST = 7;
/** Of 255, in the red theme: none; in the far view as much as a contrast of 7 asks for, since red alone gives 5.25. */
const FAR_NOT_RED = 97;

/** One line a fault; pictures are named after `name`. */
export async function faults(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  const add = (where: string, more: readonly string[]): void => void found.push(...more.map((fault) => `${name}, ${where}: ${fault}`));
  const isPanel = (await page.$('#panel')) !== null;
  const isPaper = !isPanel && (await page.$('#check, #ask')) === null;
  const isFar = (await page.$('[data-far="true"]')) !== null;
  await wear(page, 'light');
  for (const width of [WIDEST, ...WIDTHS]) {
    if (!isPanel && width < NARROWEST_TAB) continue;
    await show(page, width);
    const isWidest = width === WIDEST;
    const [cut, targets, broken, small] = await Promise.all([
      cutIn(page, `${name} at ${width}`, false),
      isWidest ? [] : smallTargets(page),
      isWidest || width === NARROWEST ? [] : brokenWords(page),
      isWidest || !isFar ? [] : smallWords(page, '[data-far="true"]'),
    ]);
    found.push(...cut);
    add(`${width}`, targets);
    add(
      `${width}`,
      broken.map((word) => `“${word}” is broken`),
    );
    add(`${width}`, small);
    if (isWidest) continue;
    add(`${width}`, await faultsBesideColours(page));
    if (width !== WIDTHS.at(-1)) await keep(page, `${name}-${width}-light`);
  }
  for (const theme of isPaper ? PAPER : THEMES) {
    await wear(page, theme);
    if (theme === 'dim' || theme === 'red')
      add(theme, await shining(page, await picture(page, `${name}-360-${theme}`), theme === 'red' ? (isFar ? FAR_NOT_RED : 0) : 255));
    else await keep(page, `${name}-360-${theme}`);
    add(theme, await contrastFaults(page, isFar ? FAR_CONTRAST : null));
  }
  await wear(page, 'light');
  return found;
}

/** What is drawn in pixels follows a frame later. */
async function show(page: Page, width: number): Promise<void> {
  await page.setViewport({ width, height: 640 });
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
}

async function shining(page: Page, seen: Uint8Array, mostNotRed: number): Promise<string[]> {
  const { mean, patch, area, what, notRed } = await shineOf(page, seen);
  const parts: readonly (readonly [string, number])[] = [
    ['all of it', mean],
    ['a patch of it', patch],
    [what, area],
  ];
  return [
    ...parts.flatMap(([part, light]) => (light > MOST_SHINE ? [`${part} gives ${light.toFixed(3)} of white’s light`] : [])),
    ...(notRed > mostNotRed ? [`${notRed} of 255 is not red`] : []),
  ];
}

/** The same of each room of the screen, opened one after another. */
export async function faultsInRooms(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (let room = 0; await openRoom(page, room); room += 1) found.push(...(await faults(page, `${name}-${room + 1}`)));
  return found;
}
