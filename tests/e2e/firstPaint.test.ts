// The first thing seen: what is pressed in it before the panel's own script is there is done when it is, once; and it is
// never shown while a sweep is under way.
import { afterEach, expect, test } from 'vitest';
import type { Page } from 'puppeteer-core';
import { launchChromium, type Chromium } from './chromium.ts';
import { choose, seatAt, until, untilPhase, type Look } from './seat.ts';

let chromium: Chromium;
afterEach(() => chromium.close());

/** A panel in a tab whose script is held back as by a slow disk, until it is let go. */
async function heldBack(): Promise<{ page: Page; letGo: () => void }> {
  chromium = await launchChromium();
  const page = await chromium.browser.newPage();
  await page.setViewport({ width: 360, height: 700 });
  await page.setRequestInterception(true);
  let letGo = (): void => undefined;
  const going = new Promise<void>((go) => (letGo = go));
  page.on('request', async (request) => {
    if (request.url().endsWith('/panel.js')) await going;
    await request.continue();
  });
  await page.goto(`chrome-extension://${chromium.extensionId}/panel.html`);
  return { page, letGo };
}

const screen = (page: Page): Promise<string | null> => page.$eval('main', (main) => main.getAttribute('data-screen'));

const untilLeft = (page: Page): Promise<Look> => until(seatAt(page), 'another screen', ({ screen: at }) => at !== null && at !== 'start');

test('a press in what is drawn first is taken although no other script is there yet', async () => {
  const { page, letGo } = await heldBack();
  const button = await page.waitForSelector('[elementtiming="first"]', { visible: true });
  await button?.click();
  expect(await screen(page)).toBeNull();
  letGo();
  await untilLeft(page);
});

test('a press by keyboard in what is drawn first is taken', async () => {
  const { page, letGo } = await heldBack();
  await page.waitForSelector('[elementtiming="first"]', { visible: true });
  await page.focus('[elementtiming="first"]');
  await page.keyboard.press('Enter');
  expect(await screen(page)).toBeNull();
  letGo();
  await untilLeft(page);
});

test('with a sweep under way the start is never shown, not for a frame', async () => {
  chromium = await launchChromium();
  const first = await chromium.openTab();
  await choose(seatAt(first), 'Practise');
  await untilPhase(seatAt(first), 'dialling');
  await first.close();

  const page = await chromium.browser.newPage();
  await page.evaluateOnNewDocument(() => {
    let frames = 0;
    let wrong = 0;
    const look = (): void => {
      frames += 1;
      if (document.querySelector('[elementtiming="first"]')?.checkVisibility()) wrong += 1;
      Object.assign(globalThis, { frames, wrong });
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.goto(`chrome-extension://${chromium.extensionId}/panel.html`);
  await untilPhase(seatAt(page), 'dialling');
  const { frames, wrong } = await page.evaluate(() => {
    const seen = globalThis as unknown as { frames: number; wrong: number };
    return { frames: seen.frames, wrong: seen.wrong };
  });
  console.log(`with a sweep under way: ${frames} frames until the sweep stood, ${wrong} of them with the start`);
  expect(frames).toBeGreaterThan(0);
  expect(wrong).toBe(0);
});

test('a panel whose script cannot be read says so instead of standing dead', async () => {
  chromium = await launchChromium();
  const page = await chromium.browser.newPage();
  await page.setRequestInterception(true);
  page.on('request', (request) => void (request.url().endsWith('/panel.js') ? request.abort() : request.continue()));
  await page.goto(`chrome-extension://${chromium.extensionId}/panel.html`);
  await page.waitForFunction(() => document.body.innerText !== '' && !document.querySelector('button')?.checkVisibility());
  expect(await page.evaluate(() => document.body.innerText)).toContain('cannot be read');
});
