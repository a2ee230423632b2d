// The moves of a person who goes through the panel and looks at every screen, whatever its language: what is looked for is given by
// who sets out.
import type { Page } from 'puppeteer-core';
import type { Chromium } from '../chromium.ts';
import { plainly } from '../pseudo/lengthened.ts';
import { openRoom } from '../screens.ts';
import { seatAt, type, until, type Seat } from '../seat.ts';
import { putUnderWay } from '../underWay.ts';

/** What may be looked for on a page; `again`: how to come to it once its address is opened anew. */
type LookAt = (tour: Tour, name: string, again?: Way) => Promise<unknown>;
export type Way = (page: Page) => Promise<unknown>;

export interface Tour {
  readonly chromium: Chromium;
  page: Page;
  seat: Seat;
  readonly seen: string[];
  readonly look: LookAt;
}

/** The panel opened anew on this sweep. */
export async function reopen(tour: Tour, live: Parameters<typeof putUnderWay>[1]): Promise<void> {
  await tour.page.close();
  await putUnderWay(tour.chromium, live);
  tour.page = await tour.chromium.openTab();
  tour.seat = seatAt(tour.page);
}

export const untilStart = (seat: Seat): Promise<unknown> => until(seat, 'the start', ({ screen, text }) => screen === 'start' && text.includes('…+20'));

export async function at(tour: Tour, name: string, again?: Way): Promise<void> {
  await tour.look(tour, name, again);
  tour.seen.push(name);
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

export async function untilShown(tour: Tour, english: string): Promise<void> {
  const deadline = performance.now() + 20_000;
  while (!(await shows(tour, english))) {
    if (performance.now() > deadline) throw new Error(`“${english}” is never shown.`);
    await new Promise((later) => setTimeout(later, 50));
  }
}

/** A page in a tab of its own, and what is done there before it is looked at. */
export async function visit(tour: Tour, path: string, name: string, way: Way = () => Promise.resolve()): Promise<void> {
  const before = tour.page;
  tour.page = await tour.chromium.openTab(path);
  // One that listens would go on doing so.
  await before.close();
  const there = async (page: Page): Promise<void> => {
    await untilRead(page);
    await way(page);
    await settled(tour);
  };
  await there(tour.page);
  await at(tour, name, there);
}

/** Pages in tabs have no title until they have their words. */
const untilRead = (page: Page): Promise<unknown> => page.waitForFunction(() => document.title !== '' && (document.body.textContent ?? '').trim() !== '');

export const untilScreen = ({ seat }: Tour, wanted: string): Promise<unknown> =>
  until(seat, wanted, ({ screen, text }) => screen === wanted && text.length > 30);

/** What is read when it is first shown has come. */
export const settled = ({ page }: Pick<Tour, 'page'>): Promise<unknown> =>
  page.waitForNetworkIdle({ idleTime: 150 }).then(() => new Promise((go) => setTimeout(go, 150)));
