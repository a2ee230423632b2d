// Every screen and every phase of a sweep, near and from afar, from the narrowest sidebar at twice the size of text to the side panel,
// in every theme: what `faults` finds wrong is nothing.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import type { Phase } from '../../src/sweep/state.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { faults, faultsInRooms } from './faults.ts';
import { click, put, says } from './library/shelves.ts';
import { storedShop } from './library/shop.ts';
import { choose, press, seatAt, type, until, untilPhase, untilText, type Seat } from './seat.ts';
import { beginWith, holdOnce, keys, tell, toTheStart, untilStart } from './sweeping.ts';
import { practiceSweep, putUnderWay, sweepIn } from './underWay.ts';

interface Visit {
  readonly chromium: Chromium;
  readonly page: Page;
  readonly seat: Seat;
  /** Of all that was looked at. */
  readonly found: string[];
  look(name: string): Promise<void>;
}

async function open(stored: Record<string, unknown> = {}): Promise<Visit> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  await put(chromium.worker, stored);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  const found: string[] = [];
  return { chromium, page, seat, found, look: async (name) => void found.push(...(await faults(page, name))) };
}

const isRead = (page: Page): Promise<unknown> => page.waitForFunction(() => !document.querySelector('main')?.textContent?.includes('Opening'));

/** Opens what can be opened once the screen is read, rooms that close each other too, and waits for what is read then. */
async function unfold(page: Page): Promise<void> {
  await isRead(page);
  await page.$$eval('main details', (all) =>
    all.forEach((one) => {
      one.removeAttribute('name');
      one.open = true;
    }),
  );
  await isRead(page);
}

const back = (page: Page): Promise<void> => page.locator('[aria-label="Back"]').click();
const screen = (page: Page, name: string): Promise<unknown> => page.waitForSelector(`[data-screen="${name}"]`);

test('no screen beside the sweep has a fault, empty or in use', async () => {
  const { chromium, page, seat, found, look } = await open();
  await look('start');
  await type(seat, 'Corvid 24-70 f/4');
  await look('start-typing');
  for (const chip of ['Body', 'Focal length', 'Distance', 'Range', 'More']) {
    await choose(seat, chip);
    if (chip === 'More') await untilText(seat, 'Way of working');
    await look(`start-${chip.toLowerCase().replace(' ', '-')}`);
    await press(seat, 'Escape');
  }
  await tell(seat, 'Focal length', 'Focal length, mm', '9999');
  await look('start-refused');
  await press(seat, 'Escape');
  for (const place of ['Logbook', 'Plan', 'Kit', 'Settings', 'Help']) {
    await choose(seat, place);
    await until(seat, place, (seen) => seen.screen === place.toLowerCase() && seen.text.length > 60);
    await look(place.toLowerCase());
    found.push(...(await faultsInRooms(page, place.toLowerCase())));
    await back(page);
    await until(seat, 'the start', (seen) => seen.screen === 'start');
  }
  await choose(seat, 'Settings');
  await screen(page, 'settings');
  await choose(seat, 'About Sweepbook');
  await screen(page, 'about');
  await look('about');
  await back(page);
  await back(page);
  await until(seat, 'the start', (seen) => seen.screen === 'start');

  await putUnderWay(chromium, sweepIn('offered'));
  await untilPhase(seat, 'offered');
  await press(seat, 'a');
  await until(seat, 'the outcome', (seen) => seen.found !== null);
  await look('outcome');
  await press(seat, 'w');
  await page.waitForSelector('[data-far="true"]');
  await look('far-outcome');
  await press(seat, 'w');
  await choose(seat, 'Next lens');
  await screen(page, 'next');
  await look('next-lens');
  await back(page);
  await untilStart(seat);
  await choose(seat, 'Logbook');
  await untilText(seat, '1 found');
  await look('logbook-found');
  await seat.click('.entries button');
  await screen(page, 'situation');
  await unfold(page);
  await look('situation');
  await seat.click('.history button');
  await until(seat, 'the record', (seen) => seen.screen === 'record' && seen.holds.length > 0);
  await look('record');
  expect(found).toEqual([]);
});

test('no screen of a logbook and kit of years has a fault', async () => {
  const { chromium, page, found, look } = await open(storedShop(Date.now()));
  await look('start-full');
  await click(page, 'Kit');
  await says(page, 'They share one stored value');
  await look('kit-full');
  for (const [list, piece] of [
    ['Bodies', 'body'],
    ['Lenses', 'lens'],
  ]) {
    await page.locator(`[aria-label="${list}"] li button`).click();
    await screen(page, piece ?? '');
    await unfold(page);
    await look(`${piece}-full`);
    await back(page);
  }
  await click(page, 'Add a converter');
  await says(page, 'Factor');
  await look('converter');
  await back(page);
  await back(page);
  await click(page, 'Plan');
  await says(page, 'Distances');
  await look('plan-full');
  await back(page);
  await click(page, 'Logbook');
  await says(page, 'Due again');
  await unfold(page);
  await look('logbook-full');
  await page.locator('::-p-text(200\u00a0mm at 10\u00a0m)').click();
  await page.waitForSelector('[data-screen="situation"] .chart circle');
  await unfold(page);
  await look('situation-full');
  await click(page, 'What to enter for this lens');
  await screen(page, 'entering');
  await unfold(page);
  await look('entering');
  await back(page);
  await back(page);
  await click(page, 'Backup and tables');
  await screen(page, 'files');
  await look('files');
  await back(page);
  await back(page);
  await click(page, 'Check with photographs');
  await screen(page, 'photographs');
  await look('photographs');
  await back(page);
  await click(page, 'Practice camera');
  await screen(page, 'practice');
  await look('practice');
  await click(page, 'Practice pictures');
  await screen(page, 'practice pictures');
  await look('practice-pictures');
  await back(page);
  await click(page, 'Train your eye');
  await says(page, 'Ten holds of two seconds');
  await look('training');
  await back(page);
  await back(page);
  await page.locator('.voicemark').click();
  await says(page, 'Allow');
  await look('voice');
  for (const tab of ['hearing', 'microphone', 'card', 'welcome']) {
    const paper = await chromium.openTab(tab === 'card' ? 'card.html#b' : `${tab}.html`);
    await paper.waitForFunction(() => (document.querySelector('main')?.textContent ?? '').length > 60);
    found.push(...(await faults(paper, tab)));
  }
  expect(found).toEqual([]);
});

const PHASES = ['dialling', 'offered', 'paused', 'checking', 'finished'] satisfies Phase['name'][];

test('no phase of a sweep has a fault, near or from afar', async () => {
  const { chromium, page, seat, found, look } = await open();
  for (const phase of PHASES) {
    await putUnderWay(chromium, sweepIn(phase));
    await page.reload();
    await untilPhase(seat, phase);
    await untilText(seat, phase === 'checking' ? 'still sharp?' : 'Orrin 85 f/1.8');
    await look(phase === 'finished' ? 'outcome-nothing-held' : `sweep-${phase}`);
    await press(seat, 'w');
    await page.waitForSelector(phase === 'finished' ? '.sight' : '[data-far="true"]');
    if (phase !== 'finished') await look(`far-${phase}`);
    await press(seat, 'w');
  }
  await putUnderWay(chromium, sweepIn('dialling'));
  await page.reload();
  await untilPhase(seat, 'dialling');
  await page.setViewport({ width: 360, height: 700 });
  await choose(seat, 'Set up the bench');
  await untilText(seat, '50 focal lengths');
  await unfold(page);
  await look('bench');
  await choose(seat, 'Widest aperture');
  await type(seat, '1.8');
  await click(page, 'Walk through the set-up');
  await untilText(seat, 'Step 1 of');
  await look('walk');
  expect(found).toEqual([]);
});

test('the hold and the question after it have no fault, near or from afar, nor has the entry of another value', async () => {
  const { chromium, page, seat, found, look } = await open();
  await putUnderWay(chromium, practiceSweep(7));
  await untilPhase(seat, 'dialling');
  await press(seat, 'v');
  await untilText(seat, 'Set it');
  await look('sweep-setting');
  await choose(seat, 'Cancel');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await look('sweep-holding');
  await untilPhase(seat, 'judging');
  await look('sweep-judging');
  await press(seat, 'w');
  await page.waitForSelector('[data-far="true"]');
  await look('far-judging');
  await press(seat, 's');
  await untilPhase(seat, 'dialling');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await look('far-holding');
  expect(found).toEqual([]);
});

test('a sweep without a name, its chips, its result and the start that offers to name it have no fault', async () => {
  const { page, seat, found, look } = await open();
  await choose(seat, 'Start');
  await untilPhase(seat, 'dialling');
  await look('sweep-unnamed');
  await choose(seat, 'Lens');
  await look('sweep-unnamed-lens');
  await press(seat, 'Escape');
  await holdOnce(seat, () => 'nothing', keys);
  await press(seat, 'x');
  await untilText(seat, 'Whose result is it?');
  await look('whose-result');
  await press(seat, 'n');
  await screen(page, 'next');
  await back(page);
  await untilText(seat, 'has no name yet');
  await look('start-to-name');
  await choose(seat, 'Name it');
  await look('start-naming');
  expect(found).toEqual([]);
});

test('the start with a kit, and a look-up in it, have no fault', async () => {
  const { seat, found, look } = await open();
  await beginWith(seat, { body: 'Velde M1', lens: 'Corvid 85 f/1.8', focalLength: '85' });
  await look('sweep-named');
  await holdOnce(seat, () => 'nothing', keys);
  await press(seat, 'x');
  await until(seat, 'the end', ({ phase, text }) => phase === 'finished' && text.includes('Next lens'));
  await toTheStart(seat);
  await look('start-kit');
  await type(seat, 'cor');
  await untilText(seat, 'Start: Corvid');
  await look('start-look-up');
  expect(found).toEqual([]);
});

test('a panel that follows a sweep has no fault', async () => {
  const { chromium, seat, found } = await open();
  await putUnderWay(chromium, sweepIn('dialling'));
  await untilPhase(seat, 'dialling');
  const page = await chromium.openTab();
  await untilText(seatAt(page), 'A sweep runs in another window');
  found.push(...(await faults(page, 'start-following')));
  await choose(seatAt(page), 'Follow it');
  await untilText(seatAt(page), 'Here you can only watch.');
  found.push(...(await faults(page, 'sweep-following')));
  expect(found).toEqual([]);
});
