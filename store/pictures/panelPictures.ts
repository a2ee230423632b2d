// The real panel beside a page in a real Chromium, and pictures of it: as it stands, and a part of it larger.
import type { Page } from 'puppeteer-core';
import { launchChromium, type Chromium } from '../../tests/e2e/chromium.ts';
import { seatAt } from '../../tests/e2e/seat.ts';
import { drawn } from './drawn.ts';
import { FULL_FRAME, settingsFor, storedKit } from './kit.ts';
import type { Place, State } from './states.ts';

/** How wide the browser opens it, in CSS pixels. */
const WIDTH = 360;
/** High enough for all of a screen. */
const WHOLE = 2000;

export interface Opened extends Place {
  readonly chromium: Chromium;
}

export async function openPanel(): Promise<Opened> {
  const chromium = await launchChromium();
  const { worker } = chromium;
  await worker.evaluate((stored) => chrome.storage.local.set(stored), storedKit(Date.now(), FULL_FRAME));
  const panel = await chromium.openPanel();
  return {
    chromium,
    panel,
    seat: seatAt(panel),
    reopen: async (live) => {
      await worker.evaluate(
        (journal) => (journal === null ? chrome.storage.local.remove('live') : chrome.storage.local.set({ live: journal })),
        live ? [...live] : null,
      );
      await panel.reload();
    },
  };
}

export const wear = ({ chromium }: Opened, language: string, theme: State['theme']): Promise<void> =>
  chromium.worker.evaluate((settings) => chrome.storage.local.set({ settings }), settingsFor(language, theme) as object);

/** The panel has changed to this language. */
export async function settled(panel: Page, language: string): Promise<void> {
  await panel.waitForFunction((wanted) => document.documentElement.lang === wanted, {}, language);
  await drawn(panel);
}

/** As high as it is given, in CSS pixels, each `scale` pixels of the picture. */
export async function panelPicture(panel: Page, { top }: State, height: number, scale: number): Promise<Uint8Array> {
  await panel.setViewport({ width: WIDTH, height, deviceScaleFactor: scale });
  await panel.evaluate((first) => {
    const begins = first === undefined ? null : document.querySelector(first);
    scrollTo({ top: begins ? begins.getBoundingClientRect().top + scrollY - 8 : 0, behavior: 'instant' });
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
  }, top);
  return panel.screenshot();
}

/** As wide as it is asked for, in pixels of the picture. */
export async function largerPicture(panel: Page, { name, larger: { parts, from } }: State, width: number): Promise<Uint8Array> {
  // A screen may fill the window, so its parts are looked for where they will be taken.
  await panel.setViewport({ width: WIDTH, height: WHOLE, deviceScaleFactor: 1 });
  await panel.waitForSelector(parts);
  const { width: wide } = await boxOf(panel, parts);
  await panel.setViewport({ width: WIDTH, height: WHOLE, deviceScaleFactor: width / wide });
  await panel.evaluate(() => scrollTo({ top: 0, behavior: 'instant' }));
  const box = await boxOf(panel, parts);
  if (box.y + box.height > WHOLE) throw new Error(`What is shown larger in the picture “${name}” lies too far down.`);
  const top = from === undefined ? box.y : await panel.$$eval(from, (all) => all.at(-1)?.getBoundingClientRect().top ?? 0);
  return panel.screenshot({ clip: { ...box, y: top, height: box.y + box.height - top } });
}

const boxOf = (panel: Page, parts: string): Promise<{ x: number; y: number; width: number; height: number }> =>
  panel.$$eval(parts, (all) => {
    const boxes = all.map((one) => one.getBoundingClientRect());
    const [left, top] = [Math.min(...boxes.map((one) => one.left)), Math.min(...boxes.map((one) => one.top))];
    return { x: left, y: top, width: Math.max(...boxes.map((one) => one.right)) - left, height: Math.max(...boxes.map((one) => one.bottom)) - top };
  });
