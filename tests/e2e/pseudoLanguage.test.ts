// Contract of every screen in a language that needs half as much room again: at 180, 240 and 360 px nothing is cut, crosses
// its frame or scrolls sideways. A picture of each is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { cutIn } from './pseudo/cut.ts';
import { plainly } from './pseudo/lengthened.ts';
import { inPseudoLanguage } from './pseudo/pseudoLanguage.ts';
import { picture } from './screens.ts';
import { press, seatAt, type, until, untilPhase, type Seat } from './seat.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';
import { gapSweep, oddSweep, practiceSweep, putUnderWay, sweepIn } from './underWay.ts';

const WIDTHS = [180, 240, 360];

interface Tour {
  readonly chromium: Chromium;
  page: Page;
  seat: Seat;
  readonly faults: string[];
  readonly seen: string[];
}

async function begin(): Promise<Tour> {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const chromium = await launchChromium({ extension: await inPseudoLanguage(folder) });
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  return { chromium, page, seat, faults: [], seen: [] };
}

/** The panel opened anew on this sweep. */
async function reopen(tour: Tour, live: Parameters<typeof putUnderWay>[1]): Promise<void> {
  await tour.page.close();
  await putUnderWay(tour.chromium, live);
  tour.page = await tour.chromium.openTab();
  tour.seat = seatAt(tour.page);
}

const untilStart = (seat: Seat): Promise<unknown> => until(seat, 'the start', ({ screen, text }) => screen === 'start' && text.includes('…+20'));

/** Looks at what is shown at every width. */
async function at(tour: Tour, name: string): Promise<void> {
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
async function go({ page }: Tour, english: string): Promise<void> {
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

const untilScreen = ({ seat }: Tour, wanted: string): Promise<unknown> => until(seat, wanted, ({ screen, text }) => screen === wanted && text.length > 30);

/** What is read when it is first shown has come. */
const settled = ({ page }: Tour): Promise<unknown> => page.waitForNetworkIdle({ idleTime: 150 }).then(() => new Promise((go) => setTimeout(go, 150)));

test('the screens beside a sweep, empty and in use', async () => {
  const tour = await begin();
  const { chromium, seat } = tour;
  await at(tour, 'start');
  await type(seat, 'Corvid 24-70 f/4');
  await at(tour, 'start-typing');
  for (const chip of ['Body', 'Focal length', 'Distance', 'Range', 'More']) {
    await go(tour, chip);
    await settled(tour);
    await at(tour, `start-${chip.toLowerCase()}`);
    await press(seat, 'Escape');
  }
  for (const place of ['Logbook', 'Plan', 'Kit', 'Settings', 'Help']) {
    await go(tour, place);
    await untilScreen(tour, place.toLowerCase());
    await settled(tour);
    await at(tour, place.toLowerCase());
    await go(tour, 'Back');
    await untilStart(seat);
  }
  await go(tour, 'Practice camera');
  await settled(tour);
  await at(tour, 'practice');
  await go(tour, 'Train your eye');
  await settled(tour);
  await at(tour, 'training');

  await putUnderWay(chromium, sweepIn('offered'));
  await untilPhase(seat, 'offered');
  await press(seat, 'a');
  await untilPhase(seat, 'finished');
  await settled(tour);
  await at(tour, 'outcome');
  await press(seat, 'n');
  await untilScreen(tour, 'next');
  await at(tour, 'next-lens');
  await go(tour, 'Back');
  await untilStart(seat);
  await go(tour, 'Logbook');
  await until(seat, 'a line', ({ screen }) => screen === 'logbook');
  await tour.page.waitForSelector('.entries button');
  await at(tour, 'logbook-found');
  await tour.page.click('.entries button');
  await untilScreen(tour, 'situation');
  await settled(tour);
  await at(tour, 'situation');
  await tour.page.click('.history button');
  await until(seat, 'the record', ({ screen, text }) => screen === 'record' && text.length > 200);
  await settled(tour);
  await at(tour, 'record');
  console.log(`in the longer language: ${tour.seen.length} screens at ${WIDTHS.join(', ')} px, ${tour.faults.length} faults`);
  expect(tour.faults).toEqual([]);
});

test('every phase of a sweep, its troubles and its ends', async () => {
  const tour = await begin();
  for (const phase of ['dialling', 'offered', 'paused', 'checking', 'finished'] as const) {
    await reopen(tour, sweepIn(phase));
    await untilPhase(tour.seat, phase);
    await settled(tour);
    await at(tour, `sweep-${phase}`);
  }
  await reopen(tour, practiceSweep(7));
  await untilPhase(tour.seat, 'dialling');
  await press(tour.seat, 'v');
  await tour.page.waitForSelector('.setting');
  await at(tour, 'sweep-setting');
  await tour.page.keyboard.press('Escape');
  await reopen(tour, practiceSweep(7));
  await untilPhase(tour.seat, 'dialling');
  await press(tour.seat, ' ');
  await untilPhase(tour.seat, 'holding');
  await at(tour, 'sweep-holding');
  await untilPhase(tour.seat, 'judging');
  await at(tour, 'sweep-judging');

  await reopen(tour, oddSweep(7, 'never lights'));
  let { phase } = await untilPhase(tour.seat, 'dialling');
  while (phase === 'dialling') {
    await press(tour.seat, ' ');
    await untilPhase(tour.seat, 'holding');
    await press(tour.seat, 'n');
    ({ phase } = await untilPhase(tour.seat, 'dialling', 'offered', 'checking'));
  }
  await settled(tour);
  await at(tour, 'sweep-never-lights');
  await press(tour.seat, 'a');
  await untilPhase(tour.seat, 'finished');
  await settled(tour);
  await at(tour, 'outcome-never-lights');

  await reopen(tour, gapSweep());
  await untilPhase(tour.seat, 'offered');
  await press(tour.seat, 'a');
  await untilPhase(tour.seat, 'finished');
  await settled(tour);
  await at(tour, 'outcome-gap');
  console.log(`in the longer language: ${tour.seen.length} screens of a sweep at ${WIDTHS.join(', ')} px, ${tour.faults.length} faults`);
  expect(tour.faults).toEqual([]);
});
