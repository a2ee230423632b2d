// What is wrong with a screen as it stands, at every width: in a language that there is, and in the longer one, straight or mirrored.
import type { Page } from 'puppeteer-core';
import type { Language } from '../../../src/language.ts';
import { misses, sizeOf } from '../heights/measured.ts';
import { cutIn } from '../pseudo/cut.ts';
import { signsAfter } from '../pseudo/signs.ts';
import { keep } from '../screens.ts';
import { brokenWords, cutPlaceholders } from '../sizes.ts';

const WIDTHS = [360, 240, 180];
/** What is printed is read at the width of paper, too. */
const PAPER = [720, ...WIDTHS];
/** Down to here a single word stands in one line; on paper down to 360 px. */
const WHOLE = 240;
const WHOLE_ON_PAPER = 360;
/** Pictures that people look at. */
const PICTURED = [240, 360];
/** What a language may need more than English: as much higher may a screen be. */
const HIGHER = 1.15;

/** One line a fault, which names language, screen and width. */
export async function faultsAsWorn(page: Page, name: string, language: Language): Promise<string[]> {
  const found: string[] = [];
  const add = (all: readonly string[]): void => void found.push(...all.map((one) => `${language}, ${one}`));
  const { isPanel, isPaper, isFolded } = await kindOf(page);
  for (const width of isPaper ? PAPER : WIDTHS) {
    await show(page, width);
    const where = `${name} at ${width}`;
    // Japanese has no blanks, so it may break anywhere.
    const whole = width >= (isPaper ? WHOLE_ON_PAPER : WHOLE) && language !== 'ja';
    const [cut, broken, placeholders, size] = await Promise.all([
      cutIn(page, where, false),
      whole ? brokenWords(page) : [],
      width >= WHOLE ? cutPlaceholders(page) : [],
      width === WIDTHS[0] && isPanel && isFolded ? sizeOf(page, name) : null,
    ]);
    add(cut);
    add(broken.map((word) => `${where}: “${word}” is broken`));
    add(placeholders.map((one) => `${where}: ${one}`));
    if (size) add(misses(size, HIGHER));
    if (PICTURED.includes(width)) await keep(page, `${language}-${name}-${width}`);
  }
  return found;
}

/** Read in this direction; after that it is straight again. */
export async function faultsInLonger(page: Page, name: string, direction: 'ltr' | 'rtl'): Promise<string[]> {
  const mirrored = direction === 'rtl';
  const found: string[] = [];
  await turn(page, direction);
  for (const width of WIDTHS) {
    await show(page, width);
    const [cut, signs] = await Promise.all([cutIn(page, `${name} at ${width}`), mirrored ? signsAfter(page, name) : []]);
    found.push(...cut, ...signs);
    await keep(page, `${mirrored ? 'mirrored' : 'longer'}-${name}-${width}`);
  }
  if (mirrored) await turn(page, 'ltr');
  return found;
}

const turn = (page: Page, direction: 'ltr' | 'rtl'): Promise<void> => page.evaluate((way) => void (document.documentElement.dir = way), direction);

/** What is drawn in pixels follows a frame later. */
async function show(page: Page, width: number): Promise<void> {
  await page.setViewport({ width, height: 640 });
  await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
}

/** Held to a height is a screen as it opens. */
const kindOf = (page: Page): Promise<{ isPanel: boolean; isPaper: boolean; isFolded: boolean }> =>
  page.evaluate(() => {
    const isPanel = document.querySelector('#panel') !== null;
    return {
      isPanel,
      isPaper: !isPanel && document.querySelector('#check, #ask') === null,
      isFolded: document.querySelector('main details[open]') === null,
    };
  });
