// The main job in the real sidebar of a real Firefox: the whole sweep by keyboard, and by one switch.
import { expect, onTestFinished, test } from 'vitest';
import { launchFirefox } from './firefox.ts';
import { choose, press, seatAtSidebar, tabTo, type, until, untilPhase, type Seat } from './seat.ts';
import { beginWith, keys, practiceEye, shortenHolds, steadyEye, sweep, toTheStart, untilFound } from './sweeping.ts';
import { pedal, short, switches } from './switching.ts';
import { practiceBand, practiceSweep } from './underWay.ts';

const SEED = 7;

async function sitDown(): Promise<Seat> {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.waitFor(() => document.querySelector('h1') !== null);
  await sidebar.click('h1');
  return seatAtSidebar(sidebar);
}

test('a kit typed in and a sweep by keys end at the middle of the band, and the logbook finds it', async () => {
  const seat = await sitDown();
  await shortenHolds(seat);
  await beginWith(seat, { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' });
  await sweep(seat, steadyEye(3, 9), keys);
  await press(seat, 'a');
  expect(await untilFound(seat)).toBe(6);
  await toTheStart(seat);
  await choose(seat, 'Logbook');
  await tabTo(seat, 'Find a body, lens, focal length or distance');
  await type(seat, 'orr');
  expect((await until(seat, 'one entry', ({ text }) => text.includes('1 found'))).text).toContain('+6Orrin 85 f/1.8');
});

test('a sweep of the practice camera by one switch ends at an accepted outcome at the middle of its band', async () => {
  const seat = await sitDown();
  await seat.evaluate((live) => browser.storage.local.set({ live }), [...practiceSweep(SEED)]);
  await untilPhase(seat, 'dialling');
  const foot = pedal(seat, ' ');
  await sweep(seat, practiceEye(seat), switches(foot));
  await short(foot);
  const found = await untilFound(seat);
  const { low, high } = practiceBand(SEED);
  expect(Math.abs((found ?? Infinity) - (low + high) / 2)).toBeLessThanOrEqual(2);
});
