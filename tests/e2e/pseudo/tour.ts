// A person who goes through the panel in the longer language and looks at every screen at three widths: nothing may be cut, cross
// its frame or scroll sideways. A picture of each is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished } from 'vitest';
import { launchChromium, type Chromium } from '../chromium.ts';
import { openRoom, picture } from '../screens.ts';
import { seatAt, type, until, type Seat } from '../seat.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { putUnderWay } from '../underWay.ts';
import { cutIn } from './cut.ts';
import { plainly } from './lengthened.ts';
import { inPseudoLanguage } from './pseudoLanguage.ts';

const WIDTHS = [180, 240, 360];

export interface Tour {
  readonly chromium: Chromium;
  page: Page;
  seat: Seat;
  readonly faults: string[];
  readonly seen: string[];
}

/** `stored`: what the person has kept. `args`: of the browser. */
export async function begin(stored: Record<string, unknown> = {}, args: readonly string[] = []): Promise<Tour> {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const chromium = await launchChromium({ extension: await inPseudoLanguage(folder), args: [...args] });
  onTestFinished(chromium.close);
  await chromium.worker.evaluate((all) => chrome.storage.local.set(all), stored);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  return { chromium, page, seat, faults: [], seen: [] };
}

/** The panel opened anew on this sweep. */
export async function reopen(tour: Tour, live: Parameters<typeof putUnderWay>[1]): Promise<void> {
  await tour.page.close();
  await putUnderWay(tour.chromium, live);
  tour.page = await tour.chromium.openTab();
  tour.seat = seatAt(tour.page);
}

export const untilStart = (seat: Seat): Promise<unknown> => until(seat, 'the start', ({ screen, text }) => screen === 'start' && text.includes('…+20'));

/** Looks at what is shown at every width. */
export async function at(tour: Tour, name: string): Promise<void> {
  const { page, faults, seen } = tour;
  expect(await page.evaluate(() => document.body.textContent), `${name} is in the language`).toMatch(/⟦/u);
  for (const width of WIDTHS) {
    await page.setViewport({ width, height: 640 });
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    await picture(page, `pseudo-${name}-${width}`);
    faults.push(...(await cutIn(page, `${name} at ${width}`)));
  }
  seen.push(name);
}

/** Presses what begins with these English words. */
export async function go({ page }: Tour, english: string): Promise<void> {
  const deadline = performance.now() + 15_000;
  for (;;) {
    const names = await page.evaluate(() =>
      [...document.querySelectorAll('button, a, summary')].map((one) => one.getAttribute('aria-label') ?? one.textContent ?? ''),
    );
    const index = names.findIndex((name) => plainly(name).startsWith(english));
    if (index >= 0) return page.evaluate((one) => [...document.querySelectorAll<HTMLElement>('button, a, summary')][one]?.click(), index);
    if (performance.now() > deadline) throw new Error(`Nothing here is called “${english}”, only: ${names.map(plainly).join(' | ')}`);
    await new Promise((later) => setTimeout(later, 50));
  }
}

/** Opens what can be opened, so that all of it is looked at. */
export const unfold = async (tour: Tour): Promise<void> => {
  await tour.page.$$eval('main details', (all) => all.forEach((one) => (one.open = true)));
  await settled(tour);
};

/** Opens one room of the screen after another, and looks at each. */
export async function atRooms(tour: Tour, name: string): Promise<void> {
  for (let room = 0; await openRoom(tour.page, room); room += 1) {
    await settled(tour);
    await at(tour, `${name}-${room + 1}`);
  }
}

/** Types, in place of what stands there, into the field whose label begins with these English words. */
export async function enter({ page, seat }: Tour, english: string, text: string): Promise<void> {
  const labels = await page.$$eval('label', (all) => all.map((one) => one.textContent ?? ''));
  const index = labels.findIndex((label) => plainly(label).startsWith(english));
  if (index < 0) throw new Error(`No field is called “${english}”, only: ${labels.map(plainly).join(' | ')}`);
  await page.$$eval(
    'label',
    (all, one) => {
      const field = all[one]?.control;
      if (field instanceof HTMLInputElement) field.select();
    },
    index,
  );
  await type(seat, text);
}

/** Whether these English words are shown. */
export const shows = async ({ page }: Tour, english: string): Promise<boolean> =>
  plainly(await page.evaluate(() => document.body.textContent ?? '')).includes(english);

/** A page in a tab of its own, once it has its title and its words. */
export async function visit(tour: Tour, path: string, name: string): Promise<void> {
  const page = await tour.chromium.openTab(path);
  tour.page = page;
  await page.waitForFunction(() => document.title.includes('⟦') && document.body.textContent?.includes('⟦'));
  await settled(tour);
  await at(tour, name);
}

/** What the tour found, once it is over. */
export function found({ seen, faults }: Tour): readonly string[] {
  console.log(`in the longer language: ${seen.length} screens at ${WIDTHS.join(', ')} px, ${faults.length} faults`);
  return faults;
}

export const untilScreen = ({ seat }: Tour, wanted: string): Promise<unknown> =>
  until(seat, wanted, ({ screen, text }) => screen === wanted && text.length > 30);

/** What is read when it is first shown has come. */
export const settled = ({ page }: Tour): Promise<unknown> => page.waitForNetworkIdle({ idleTime: 150 }).then(() => new Promise((go) => setTimeout(go, 150)));
