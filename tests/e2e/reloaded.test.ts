// The extension is reloaded, or a newer version of it is loaded over the old one, in the middle of a hold, as the browser does by
// itself when an update comes: every hold that was noted is there, the one under way is asked for again, and the sweep goes on.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Target } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium, type Chromium } from './chromium.ts';
import { untilEndsWith } from './journal.ts';
import { press, seatAt, until, untilPhase, untilText, type Look, type Seat } from './seat.ts';
import { beginWith, holdOnce, keys, toTheStart } from './sweeping.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

const KIT = { body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: '85' };
const NEWER = '99.0.1';

async function inMidHold(chromium: Chromium): Promise<Look> {
  await asDeveloper(chromium);
  const seat = seatAt(await chromium.openPanel());
  await beginWith(seat, KIT);
  await holdOnce(seat, () => 'flicker', keys);
  const { next } = await holdOnce(seat, () => 'nothing', keys);
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
  await untilEndsWith(chromium, 'began');
  return next;
}

/** Without it the browser lets no extension from a folder start again. */
async function asDeveloper({ browser }: Chromium): Promise<void> {
  const page = await browser.newPage();
  await page.goto('chrome://extensions');
  await page.evaluate(async () => {
    const { developerPrivate } = chrome as unknown as { developerPrivate: { updateProfileConfiguration(to: { inDeveloperMode: boolean }): Promise<void> } };
    await developerPrivate.updateProfileConfiguration({ inDeveloperMode: true });
  });
  await page.close();
}

/** The extension ends its own pages and starts anew from its folder. */
async function reload({ browser, worker }: Chromium): Promise<void> {
  const isGone = new Promise<void>((gone) => {
    browser.on('targetdestroyed', (target) => {
      if (target.url().endsWith('/panel.html')) gone();
    });
  });
  const isBack = new Promise<Target>((back) => {
    browser.on('targetcreated', (target) => {
      if (target.type() === 'service_worker') back(target);
    });
  });
  void worker.evaluate(() => chrome.runtime.reload()).catch(() => undefined);
  await isGone;
  // It says at its start that the toolbar button opens the panel: until it has, the button does nothing.
  const background = await (await isBack).worker();
  await expect.poll(() => background?.evaluate(async () => (await chrome.sidePanel?.getPanelBehavior())?.openPanelOnActionClick)).toBe(true);
}

async function again(chromium: Chromium, before: Look): Promise<Seat> {
  const seat = seatAt(await chromium.openPanel());
  const back = await until(seat, 'the prompt', ({ announcement }) => announcement.startsWith('The hold was cut off'));
  expect(back.announcement).toContain('so it does not count.');
  expect(await until(seat, 'the holds', ({ holds }) => holds.length > 0)).toMatchObject({ holds: before.holds, value: before.value, phase: 'dialling' });
  const third = await holdOnce(seat, () => 'delayed', keys);
  expect(third.next.holds).toHaveLength(3);
  return seat;
}

test('reloaded in mid-hold, the panel opens on the same sweep with every hold, and asks for the one under way again', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const before = await inMidHold(chromium);
  await reload(chromium);
  const seat = await again(chromium, before);
  await press(seat, 'x');
  expect((await untilPhase(seat, 'finished')).holds).toHaveLength(3);
});

test('a newer version loaded over it in mid-hold goes on with the sweep, and says afterwards that it is new', async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  cpSync('dist/chromium', folder, { recursive: true });
  const chromium = await launchChromium({ extension: folder });
  onTestFinished(chromium.close);
  const before = await inMidHold(chromium);
  const path = join(folder, 'manifest.json');
  writeFileSync(path, JSON.stringify({ ...(JSON.parse(readFileSync(path, 'utf8')) as object), version: NEWER }));
  await reload(chromium);
  const seat = await again(chromium, before);
  expect(await seat.evaluate(() => chrome.runtime.getManifest().version)).toBe(NEWER);
  await press(seat, 'x');
  await untilPhase(seat, 'finished');
  await toTheStart(seat);
  await untilText(seat, NEWER);
});
