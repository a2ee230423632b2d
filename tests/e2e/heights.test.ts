// Contract of calm screens: at 360 px, folded as it opens, no screen is higher than its bound (heights/bounds.ts), and the first thing to
// press stands in a low window without scrolling.
import { expect, onTestFinished, test } from 'vitest';
import { writeBackup } from '../../src/logbook/backup/backup.ts';
import { moment } from '../../src/units.ts';
import { rigPicture } from '../photographs/rigPicture.ts';
import { jpegFile, tiffFile, VELDE } from '../kit/photographFile.ts';
import { measure, measurePage, missesOf, setOut, type Walk } from './heights/walk.ts';
import { giveFile, library } from './library/shelves.ts';
import { storedShop } from './library/shop.ts';
import { murmuring } from './murmuring.ts';
import { giveBytes } from './pictureFiles.ts';
import { pngFile } from '../pngPixels.ts';
import { enter, go, reopen, settled, shows, untilScreen, untilStart } from './routes/tour.ts';
import { press, type, until, untilPhase, untilText } from './seat.ts';
import { gapSweep, oddSweep, practiceSweep, putUnderWay, sweepIn } from './underWay.ts';

const TABLE = 'Body;Lens;Focal length (mm);Value;Date\r\nVelde M2;Orrin 35 f/2;35;4;2026-01-02\r\nVelde M2;Orrin 35 f/2;x;4;03/04/2026\r\n';
const FORMS = ['body', 'lens', 'converter'] as const;
const PLACES = ['Logbook', 'Plan', 'Kit', 'Settings', 'Help'] as const;

const back = (walk: Walk): Promise<void> => go(walk, 'Back');

async function openThe(walk: Walk, place: string): Promise<void> {
  await go(walk, place);
  await untilScreen(walk, place.toLowerCase());
}

test('the start and the screens beside a sweep, with nothing kept', async () => {
  const walk = await setOut();
  const { seat } = walk;
  await measure(walk, 'start');
  await type(seat, 'Corvid 24-70 f/4');
  await measure(walk, 'start, typing');
  for (const chip of ['Body', 'Focal length', 'Distance', 'Range', 'More']) {
    await go(walk, chip);
    await measure(walk, `start, ${chip.toLowerCase()}`);
    await press(seat, 'Escape');
  }
  for (const place of PLACES) {
    await openThe(walk, place);
    await measure(walk, `${place.toLowerCase()}, empty`);
    await back(walk);
    await untilStart(seat);
  }
  await openThe(walk, 'Settings');
  await go(walk, 'About Sweepbook');
  await untilScreen(walk, 'about');
  await measure(walk, 'about');
  await back(walk);
  await back(walk);
  await untilStart(seat);
  await go(walk, 'Practice camera');
  await measure(walk, 'practice');
  await go(walk, 'Practice pictures');
  await measure(walk, 'practice pictures');
  await go(walk, 'Take a picture');
  await until(seat, 'the picture', ({ text }) => text.includes('1 of 1 picture read.'), 60_000);
  await measure(walk, 'practice picture read');
  await back(walk);
  await settled(walk);
  await go(walk, 'Train your eye');
  await measure(walk, 'trainer');
  await go(walk, 'Begin a round');
  await measure(walk, 'trainer, a round');
  expect(missesOf(walk)).toEqual([]);
});

test('kit, logbook, situation, record and files after years of use', async () => {
  const walk = await setOut(storedShop(Date.now()));
  const { page, seat } = walk;
  await measure(walk, 'start, in use');
  for (const place of PLACES) {
    await openThe(walk, place);
    await measure(walk, place.toLowerCase());
    await back(walk);
    await untilStart(seat);
  }
  await openThe(walk, 'Kit');
  for (const form of FORMS) {
    await page.click(`.list:nth-of-type(${FORMS.indexOf(form) + 1}) li button`);
    await untilScreen(walk, form);
    await measure(walk, form);
    await back(walk);
    await go(walk, `Add a ${form}`);
    await untilScreen(walk, form);
    await measure(walk, `${form}, new`);
    await go(walk, 'Save');
    await measure(walk, `${form}, refused`);
    await back(walk);
  }
  await giveFile(page, 'image', 'photograph.jpg', jpegFile(tiffFile(VELDE)));
  await measure(walk, 'kit, from a photograph');
  await back(walk);
  await openThe(walk, 'Logbook');
  await page.locator('::-p-text(200\u00a0mm at 10\u00a0m)').click();
  await untilScreen(walk, 'situation');
  await measure(walk, 'situation');
  await go(walk, 'Evidence');
  await page.locator('.history li button').click();
  await untilText(seat, 'Replay it, hold by hold');
  await measure(walk, 'record');
  await back(walk);
  await untilScreen(walk, 'situation');
  await go(walk, 'Entering');
  await go(walk, 'What to enter for this lens');
  await untilScreen(walk, 'entering');
  await measure(walk, 'entering');
  await back(walk);
  await back(walk);
  await openFiles(walk);
  expect(missesOf(walk)).toEqual([]);
});

async function openFiles(walk: Walk): Promise<void> {
  const { page } = walk;
  await go(walk, 'Backup and tables');
  await untilScreen(walk, 'files');
  await measure(walk, 'files');
  await giveFile(page, 'json', 'backup.json', writeBackup(library, moment(Date.now())));
  await measure(walk, 'files, a backup comes in');
  await giveFile(page, 'csv', 'table.csv', TABLE);
  await measure(walk, 'files, a table comes in');
  await go(walk, 'Join it');
  await measure(walk, 'files, joined');
}

test('the bench and every step of its walk', async () => {
  const walk = await setOut(storedShop(Date.now()));
  await go(walk, 'More');
  await settled(walk);
  await go(walk, 'Set up the bench');
  await untilScreen(walk, 'bench');
  await measure(walk, 'bench');
  await enter(walk, 'Widest aperture', '1.8');
  await measure(walk, 'bench, reckoned');
  await go(walk, 'Walk through');
  await untilScreen(walk, 'walk');
  for (let step = 1; !(await shows(walk, 'Ready for the first hold')); step += 1) {
    await measure(walk, `walk, step ${step}`);
    await press(walk.seat, 'n');
  }
  await measure(walk, 'walk, done');
  expect(missesOf(walk)).toEqual([]);
});

test('every phase of a sweep, its troubles, its ends and what follows them', async () => {
  const walk = await setOut();
  for (const phase of ['dialling', 'offered', 'paused', 'checking', 'finished'] as const) {
    await reopen(walk, sweepIn(phase));
    await untilPhase(walk.seat, phase);
    await measure(walk, `sweep, ${phase}`);
  }
  await reopen(walk, practiceSweep(7));
  await untilPhase(walk.seat, 'dialling');
  await press(walk.seat, 'v');
  await walk.page.waitForSelector('.setting');
  await measure(walk, 'sweep, another value');
  await walk.page.keyboard.press('Escape');
  await reopen(walk, practiceSweep(7));
  await untilPhase(walk.seat, 'dialling');
  await press(walk.seat, ' ');
  await untilPhase(walk.seat, 'judging');
  await measure(walk, 'sweep, judging');

  await reopen(walk, oddSweep(7, 'never lights'));
  let { phase } = await untilPhase(walk.seat, 'dialling');
  while (phase === 'dialling') {
    await press(walk.seat, ' ');
    await untilPhase(walk.seat, 'holding');
    await press(walk.seat, 'n');
    ({ phase } = await untilPhase(walk.seat, 'dialling', 'offered', 'checking'));
  }
  await measure(walk, 'sweep, never lights');
  await press(walk.seat, 'a');
  await untilPhase(walk.seat, 'finished');
  await measure(walk, 'outcome, never lights');
  await reopen(walk, gapSweep());
  await untilPhase(walk.seat, 'offered');
  await press(walk.seat, 'a');
  await untilPhase(walk.seat, 'finished');
  await measure(walk, 'outcome, a gap');

  await reopen(walk, sweepIn('offered'));
  await untilPhase(walk.seat, 'offered');
  await press(walk.seat, 'a');
  await untilPhase(walk.seat, 'finished');
  await measure(walk, 'outcome');
  await press(walk.seat, 'e');
  await untilText(walk.seat, 'is marked as entered');
  await measure(walk, 'outcome, marked');
  await press(walk.seat, 'n');
  await untilScreen(walk, 'next');
  await measure(walk, 'next lens');
  expect(missesOf(walk)).toEqual([]);
});

test('photographs of a situation, before and after they are read', { timeout: 240_000 }, async () => {
  const walk = await setOut(storedShop(Date.now()));
  const { seat } = walk;
  await openThe(walk, 'Logbook');
  await walk.page.locator('::-p-text(200\u00a0mm at 10\u00a0m)').click();
  await untilScreen(walk, 'situation');
  await go(walk, 'Check it with photographs');
  await untilScreen(walk, 'photographs');
  await measure(walk, 'photographs');
  await giveBytes(seat, 'behind.png', pngFile(rigPicture(30)));
  await until(seat, 'the picture', ({ text }) => text.includes('1 of 1 picture read.'), 60_000);
  await measure(walk, 'photographs, one read');
  for (const sharp of [0, 12, 25]) await giveBytes(seat, `off-by-${sharp}.png`, pngFile(rigPicture(sharp)));
  await until(seat, 'the pictures', ({ text }) => text.includes('4 of 4 pictures read.'), 90_000);
  await measure(walk, 'photographs, four read');
  for (const kind of ['check', 'bracket']) {
    await seat.click(`input[value="${kind}"]`);
    await measure(walk, `photographs, ${kind}`);
  }
  expect(missesOf(walk)).toEqual([]);
});

test('the voice sheet and the pages in tabs that are no paper', async () => {
  const walk = await setOut(storedShop(Date.now()), murmuring(onTestFinished));
  await go(walk, 'voice off');
  await untilScreen(walk, 'voice');
  await measure(walk, 'voice');
  await measurePage(walk, 'microphone.html', 'microphone');
  await measurePage(walk, 'hearing.html', 'hearing check');
  await go(walk, 'Listen');
  await measure(walk, 'hearing check, listening');
  await go(walk, 'Teach solid');
  await measure(walk, 'hearing check, a lesson');
  expect(walk.all.length).toBe(5);
  expect(missesOf(walk)).toEqual([]);
});

test('a sweep that was left waits at the start', async () => {
  const walk = await setOut();
  await putUnderWay(walk.chromium, sweepIn('dialling'));
  await untilPhase(walk.seat, 'dialling');
  await walk.page.locator('[aria-label="Back"], .back').click();
  await untilText(walk.seat, 'A sweep is unfinished');
  await measure(walk, 'start, unfinished');
  await openThe(walk, 'Help');
  await measure(walk, 'help, a sweep waits');
  expect(missesOf(walk)).toEqual([]);
});
