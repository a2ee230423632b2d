// Contract of the screens in a real browser at the width of the narrowest sidebar: nothing overflows, what is needed with
// the eye at the viewfinder is in sight without scrolling, and axe finds no fault in either theme.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { accessibilityFaults } from './axe.ts';
import { launchChromium } from './chromium.ts';
import { picture, wear } from './screens.ts';

const NARROW = { width: 240, height: 480 };

async function open(size: { width: number; height: number }): Promise<Page> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab('panel.html', size);
  await page.waitForSelector('h1');
  return page;
}

const click = (page: Page, name: string) => page.locator(`::-p-aria(${name})`).click();
const inPhase = (page: Page, phase: string) => page.waitForSelector(`[data-phase="${phase}"]`);

/** What is wrong with the screen as it stands, in either theme. */
async function faults(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const theme of ['dark', 'light'] as const) {
    await wear(page, theme);
    await picture(page, `${name}-${theme}`);
    found.push(...(await accessibilityFaults(page)));
  }
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  return wide > 0 ? [...found, `${name} is ${wide} px too wide`] : found;
}

/** How far down the lowest of these reaches. */
const lowest = (page: Page, ...selectors: string[]) =>
  page.evaluate((wanted) => Math.max(...wanted.map((selector) => document.querySelector(selector)?.getBoundingClientRect().bottom ?? Infinity)), selectors);

test('at 240 by 480 a practice sweep shows value, hold, what was heard and the switch without scrolling, and no screen has a fault', async () => {
  const page = await open(NARROW);
  expect(await faults(page, 'narrow-start')).toEqual([]);

  await click(page, 'Practice camera');
  await click(page, 'Practise');
  await inPhase(page, 'dialling');
  expect(await faults(page, 'narrow-dialling')).toEqual([]);

  await page.keyboard.press('Space');
  await inPhase(page, 'holding');
  const needed = ['[aria-label="Value to set"]', '.track', '[aria-label^="Practice light"]', '[aria-label="Last heard"]', '.switch'];
  expect(await lowest(page, ...needed)).toBeLessThanOrEqual(NARROW.height);

  await page.keyboard.press('n');
  await inPhase(page, 'dialling');
  expect(await faults(page, 'narrow-next')).toEqual([]);

  await page.keyboard.press('x');
  await inPhase(page, 'finished');
  expect(await faults(page, 'narrow-outcome')).toEqual([]);
});

test.each(['Logbook', 'Settings', 'Help'])('%s at 240 px has no fault, and back leads to the start', async (place) => {
  const page = await open(NARROW);
  await click(page, place);
  await page.waitForSelector(`[data-screen="${place.toLowerCase()}"]`);
  expect(await faults(page, `narrow-${place.toLowerCase()}`)).toEqual([]);
  await click(page, 'Back');
  await page.waitForSelector('[data-screen="start"]');
});

test('a kit is typed in, a sweep is run by keys alone, and the logbook has it', async () => {
  const page = await open({ width: 360, height: 800 });
  await page.locator('[type="search"]').fill('Orrin 85 f/1.8');
  await click(page, 'New lens \u201cOrrin 85 f/1.8\u201d: Start');
  await inPhase(page, 'dialling');
  for (const answer of ['n', 'd', 'f'] as const) {
    await page.keyboard.press('Space');
    await inPhase(page, 'holding');
    await page.keyboard.press(answer);
    await inPhase(page, 'dialling');
  }
  expect(await faults(page, 'wide-dialling')).toEqual([]);
  await page.keyboard.press('x');
  await inPhase(page, 'finished');
  await click(page, 'Next lens');
  await click(page, 'Back');
  await click(page, 'Logbook');
  await page.waitForFunction(() => document.querySelector('main')?.textContent?.includes('85\u00a0mm at 4.25\u00a0m'));
  expect(await faults(page, 'wide-logbook')).toEqual([]);
});
