// Every screen and every phase of a sweep, at the width of the narrowest sidebar and of the side panel, in both themes:
// axe finds no fault, nothing is too wide, and a picture is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import type { Phase } from '../../src/sweep/state.ts';
import { launchChromium, type Chromium } from './chromium.ts';
import { faults, faultsInRooms } from './faults.ts';
import { choose, press, seatAt, type, until, untilPhase, untilText, type Seat } from './seat.ts';
import { beginWith, holdOnce, keys, tell, toTheStart, untilStart } from './sweeping.ts';
import { practiceSweep, putUnderWay, sweepIn } from './underWay.ts';

async function open(): Promise<{ chromium: Chromium; page: Page; seat: Seat }> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const seat = seatAt(page);
  await untilStart(seat);
  return { chromium, page, seat };
}

test('no screen beside the sweep has a fault, empty or in use', { timeout: 240_000 }, async () => {
  const { chromium, page, seat } = await open();
  expect(await faults(page, 'start')).toEqual([]);
  await type(seat, 'Corvid 24-70 f/4');
  expect(await faults(page, 'start-typing')).toEqual([]);
  for (const chip of ['Body', 'Focal length', 'Distance', 'Range', 'More']) {
    await choose(seat, chip);
    if (chip === 'More') await untilText(seat, 'Way of working');
    expect(await faults(page, `start-${chip.toLowerCase().replace(' ', '-')}`)).toEqual([]);
    await press(seat, 'Escape');
  }
  await tell(seat, 'Focal length', 'Focal length, mm', '9999');
  expect(await faults(page, 'start-refused')).toEqual([]);
  await press(seat, 'Escape');
  for (const place of ['Logbook', 'Plan', 'Settings', 'Help']) {
    await choose(seat, place);
    await until(seat, place, ({ screen, text }) => screen === place.toLowerCase() && text.length > 60);
    expect(await faults(page, place.toLowerCase())).toEqual([]);
    expect(await faultsInRooms(page, place.toLowerCase())).toEqual([]);
    await seat.click('[aria-label="Back"]');
    await until(seat, 'the start', ({ screen }) => screen === 'start');
  }

  await putUnderWay(chromium, sweepIn('offered'));
  await untilPhase(seat, 'offered');
  await press(seat, 'a');
  await until(seat, 'the outcome', ({ found }) => found !== null);
  expect(await faults(page, 'outcome')).toEqual([]);
  await choose(seat, 'Next lens');
  await until(seat, 'the next lens', ({ screen }) => screen === 'next');
  expect(await faults(page, 'next-lens')).toEqual([]);
  await seat.click('[aria-label="Back"]');
  await untilStart(seat);
  await choose(seat, 'Logbook');
  await untilText(seat, '1 found');
  expect(await faults(page, 'logbook-found')).toEqual([]);
  await seat.click('.entries button');
  await until(seat, 'the situation', ({ screen }) => screen === 'situation');
  expect(await faults(page, 'situation')).toEqual([]);
  await choose(seat, 'Evidence');
  expect(await faults(page, 'situation-evidence')).toEqual([]);
  await seat.click('.history button');
  await until(seat, 'the record', ({ screen, holds }) => screen === 'record' && holds.length > 0);
  expect(await faults(page, 'record')).toEqual([]);

  const asking = await chromium.openTab('microphone.html');
  await asking.waitForFunction(() => (document.querySelector('#state')?.textContent ?? '') !== '');
  expect(await faults(asking, 'microphone')).toEqual([]);
});

test.each(['dialling', 'offered', 'paused', 'checking', 'finished'] satisfies Phase['name'][])('a sweep that is %s has no fault', async (phase) => {
  const { chromium, page, seat } = await open();
  await putUnderWay(chromium, sweepIn(phase));
  await untilPhase(seat, phase);
  await untilText(seat, phase === 'checking' ? 'still sharp?' : 'Orrin 85 f/1.8');
  expect(await faults(page, phase === 'finished' ? 'outcome-nothing-held' : `sweep-${phase}`)).toEqual([]);
});

test('the hold and the question after it have no fault, nor has the entry of another value', async () => {
  const { chromium, page, seat } = await open();
  await putUnderWay(chromium, practiceSweep(7));
  await untilPhase(seat, 'dialling');
  await press(seat, 'v');
  await untilText(seat, 'Set it');
  expect(await faults(page, 'sweep-setting')).toEqual([]);
  await choose(seat, 'Cancel');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  expect(await faults(page, 'sweep-holding')).toEqual([]);
  await untilPhase(seat, 'judging');
  expect(await faults(page, 'sweep-judging')).toEqual([]);
});

test('a sweep without a name, its chips, its result and the start that offers to name it have no fault', async () => {
  const { page, seat } = await open();
  await choose(seat, 'Start');
  await untilPhase(seat, 'dialling');
  expect(await faults(page, 'sweep-unnamed')).toEqual([]);
  await choose(seat, 'Lens');
  expect(await faults(page, 'sweep-unnamed-lens')).toEqual([]);
  await press(seat, 'Escape');
  await holdOnce(seat, () => 'nothing', keys);
  await press(seat, 'x');
  await untilText(seat, 'Whose result is it?');
  expect(await faults(page, 'whose-result')).toEqual([]);
  await press(seat, 'n');
  await until(seat, 'the next lens', ({ screen }) => screen === 'next');
  await seat.click('[aria-label="Back"]');
  await untilText(seat, 'has no name yet');
  expect(await faults(page, 'start-to-name')).toEqual([]);
  await choose(seat, 'Name it');
  expect(await faults(page, 'start-naming')).toEqual([]);
});

test('the start with a kit, and a look-up in it, have no fault', async () => {
  const { page, seat } = await open();
  await beginWith(seat, { body: 'Velde M1', lens: 'Corvid 85 f/1.8', focalLength: '85' });
  expect(await faults(page, 'sweep-named')).toEqual([]);
  await holdOnce(seat, () => 'nothing', keys);
  await press(seat, 'x');
  await until(seat, 'the end', ({ phase, text }) => phase === 'finished' && text.includes('Next lens'));
  await toTheStart(seat);
  expect(await faults(page, 'start-kit')).toEqual([]);
  await type(seat, 'cor');
  await untilText(seat, 'Start: Corvid');
  expect(await faults(page, 'start-look-up')).toEqual([]);
});

test('a panel that follows a sweep has no fault', async () => {
  const { chromium, seat } = await open();
  await putUnderWay(chromium, sweepIn('dialling'));
  await untilPhase(seat, 'dialling');
  const page = await chromium.openTab();
  await untilText(seatAt(page), 'A sweep runs in another window');
  expect(await faults(page, 'start-following')).toEqual([]);
  await choose(seatAt(page), 'Follow it');
  await untilText(seatAt(page), 'Here you can only watch.');
  expect(await faults(page, 'sweep-following')).toEqual([]);
});
