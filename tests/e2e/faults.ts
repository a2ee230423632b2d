// What is wrong with what a page shows, at the width of the narrowest sidebar and of the side panel, in both themes: what
// axe finds, what is too wide, and words that are broken. A picture of each is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { accessibilityFaults } from './axe.ts';
import { openRoom, picture, wear } from './screens.ts';

const WIDTHS = [240, 360] as const;
/** Of a panel zoomed in far: nothing of it may scroll sideways. A page in a tab is wider. */
const NARROWEST = 180;
const THEMES = ['dark', 'light'] as const;

/** One line a fault; pictures are named after `name`. */
export async function faults(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  const isPanel = (await page.$('#panel')) !== null;
  for (const width of isPanel ? [NARROWEST, ...WIDTHS] : WIDTHS) {
    await page.setViewport({ width, height: 640 });
    // What is drawn in pixels follows a frame later.
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (over > 0) found.push(`${name}: ${over} px too wide at ${width}`);
    if (width === NARROWEST) continue;
    for (const word of await brokenWords(page)) found.push(`${name}: “${word}” is broken at ${width}`);
    for (const theme of THEMES) {
      await wear(page, theme);
      await picture(page, `${name}-${width}-${theme}`);
      for (const fault of await accessibilityFaults(page)) found.push(`${name}, ${width}, ${theme}: ${fault}`);
    }
  }
  return found;
}

/** The same of each room of the screen, opened one after another. */
export async function faultsInRooms(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (let room = 0; await openRoom(page, room); room += 1) found.push(...(await faults(page, `${name}-${room + 1}`)));
  return found;
}

/** Single words that stand in two lines: one that is to be said or pressed must be read at a glance. */
const brokenWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const broken: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent?.trim() ?? '';
      if (!/^\p{L}+$/u.test(text)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) broken.push(text);
    }
    return broken;
  });
