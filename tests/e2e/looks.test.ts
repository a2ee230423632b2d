// Contract of what a person chose of the panel's look, in real browsers: it is there with the first frame, it comes back by itself, and
// a person's own colours go before it.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { pictureFile } from './screens.ts';
import { choose, press, seatAt, untilPhase, untilText } from './seat.ts';
import { untilStart } from './sweeping.ts';
import { putUnderWay, sweepIn } from './underWay.ts';

test('a theme chosen in the settings is worn by the first frame of the next panel, and the far view comes back with the sweep', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  await choose(seat, 'Settings');
  await untilText(seat, 'Look');
  await choose(seat, 'Look');
  await untilText(seat, 'Red alone');
  await seat.click('input[value="dim"]');
  await page.waitForSelector('[data-theme="dim"]');
  await putUnderWay(chromium, sweepIn('dialling'));
  await untilPhase(seat, 'dialling');
  await press(seat, 'w');
  await page.waitForSelector('[data-far="true"]');
  await page.waitForFunction(async () => {
    const { settings } = await chrome.storage.local.get('settings');
    return (settings as { look?: { far?: boolean } } | undefined)?.look?.far === true;
  });
  await page.evaluateOnNewDocument(() => {
    addEventListener('DOMContentLoaded', () => Object.assign(globalThis, { wornAtFirst: document.documentElement.dataset['theme'] }));
  });
  await page.reload();
  await page.waitForSelector('[data-far="true"]');
  expect(await page.evaluate(() => (globalThis as { wornAtFirst?: string }).wornAtFirst)).toBe('dim');
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe('rgb(6, 5, 5)');
});

test('Firefox: with a person’s own colours an empty track is a thin line, and no theme goes before them', async () => {
  const firefox = await launchFirefox({ prefs: { 'browser.display.document_color_use': 2 } });
  onTestFinished(firefox.close);
  const page: Page = await firefox.openTab('[data-screen="start"]');
  await page.click('#start-button');
  await page.waitForSelector('[data-phase="dialling"]');
  const look = () =>
    page.evaluate(() => ({
      forced: matchMedia('(forced-colors: active)').matches,
      groove: getComputedStyle(document.querySelector('.groove') ?? document.body).strokeWidth,
      ground: getComputedStyle(document.body).backgroundColor,
    }));
  const plain = await look();
  expect(plain).toMatchObject({ forced: true, groove: '1px' });
  await page.screenshot({ path: pictureFile('firefox-forced-dialling') });
  await page.evaluate(() => (document.documentElement.dataset['theme'] = 'red'));
  expect(await look()).toEqual(plain);
  await page.keyboard.press('w');
  await page.waitForSelector('[data-far="true"]');
  await page.screenshot({ path: pictureFile('firefox-forced-far') });
});
