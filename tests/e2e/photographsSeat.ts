// Photographs in a real Chromium: the screen of a situation that was measured and entered, pictures of the rig brought in, and a look at all of it.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished } from 'vitest';
import { RIG_SENSOR, rigPicture } from '../photographs/rigPicture.ts';
import { accessibilityFaults } from './axe.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { put, stored } from './library/shelves.ts';
import { giveBytes } from './pictureFiles.ts';
import { pngFile } from '../pngPixels.ts';
import { keep, wear } from './screens.ts';
import { choose, seatAt, seatAtSidebar, until, untilText, type Seat } from './seat.ts';

export const BROWSERS = ['Chromium', 'Firefox'] as const;

/** The photographs of nothing that is known, from the start. */
export async function photographsIn(browser: (typeof BROWSERS)[number]): Promise<Seat> {
  const launched = await (browser === 'Chromium' ? launchChromium() : launchFirefox());
  onTestFinished(launched.close);
  const seat = 'openPanel' in launched ? seatAt(await launched.openPanel()) : seatAtSidebar(await launched.openSidebar());
  await untilText(seat, 'Check with photographs');
  await seat.click('h1');
  await choose(seat, 'Check with photographs');
  await until(seat, 'the photographs', ({ screen, text }) => screen === 'photographs' && text.includes('drop them here'));
  return seat;
}

export interface AtPhotographs {
  readonly chromium: Chromium;
  readonly page: Page;
  readonly seat: Seat;
}

/** The photographs of a situation that was measured and entered, with the camera of the pictures in the kit. */
export async function photographsOfSituation(): Promise<AtPhotographs> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const kit = structuredClone(stored['kit']) as { bodies: object[]; lenses: object[] };
  Object.assign(kit.bodies[0] ?? {}, { sensor: RIG_SENSOR });
  Object.assign(kit.lenses[0] ?? {}, { widest: { from: 1.8, to: 1.8 } });
  await put(chromium.worker, { ...stored, kit });
  const { page, seat } = await situationPage(chromium);
  await choose(seat, 'Check it with photographs');
  await untilText(seat, 'drop them here');
  return { chromium, page, seat };
}

/** The page of that situation in a panel that is opened anew. */
export async function situationPage(chromium: Chromium): Promise<Omit<AtPhotographs, 'chromium'>> {
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilText(seat, 'Logbook');
  await choose(seat, 'Logbook');
  await untilText(seat, '1 found');
  await seat.click('.entries button');
  await untilText(seat, 'Check it with photographs');
  return { page, seat };
}

/** Pictures focused so many millimetres behind the target, numbered as a camera numbers its files. */
export async function giveShots(seat: Seat, errors: readonly number[]): Promise<void> {
  for (const [at, error] of errors.entries()) await giveBytes(seat, `shot-${at + 1}.png`, pngFile(rigPicture(error)));
}

/** Narrow and wide, dark and light: nothing is cut off, and no one is shut out. */
export async function lookAtAllOf(page: Page, name: string): Promise<void> {
  for (const width of [180, 240, 360]) {
    await page.setViewport({ width, height: 700 });
    for (const theme of ['dark', 'light'] as const) {
      await wear(page, theme);
      await keep(page, `${name}-${width}-${theme}`);
      expect(await accessibilityFaults(page)).toEqual([]);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  }
}
