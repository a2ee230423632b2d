// Contract of a power cut while much is written: nothing acknowledged is lost, and nothing is written in part. What one
// start finds is where the next cut begins, so that twenty cuts cost twenty-one starts.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { VERSION } from '../../../src/logbook/stored.ts';
import { sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { launchChromium, type Chromium } from '../chromium.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { click, giveFile, kept, library, put, says, stored, storedAgain } from './shelves.ts';

const CUTS = 20;
/** The cuts come evenly over the time this takes from its beginning, in milliseconds. */
const IMPORT_TAKES = 120;
const MIGRATION_TAKES = 400;

const pause = (milliseconds: number): Promise<void> => new Promise((go) => setTimeout(go, milliseconds));

/** Starts the browser again and again on one profile; `cut` works in it until its power is cut, `found` looks at what is left. */
async function cutAgainAndAgain(
  cut: (chromium: Chromium, time: number) => Promise<void>,
  found: (chromium: Chromium, time: number) => Promise<void>,
): Promise<void> {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  let chromium = await launchChromium({ profile });
  for (let time = 0; time < CUTS; time++) {
    await chromium.worker.evaluate(() => chrome.storage.local.clear());
    await cut(chromium, time);
    await chromium.kill();
    chromium = await launchChromium({ profile });
    await found(chromium, time);
  }
  await chromium.close();
}

test('killed 20 times during an import: all of it is there or nothing of it, all if it was called done, and all of before', async () => {
  const many = Array.from({ length: 600 }, (_, index) => sweepRecord(`new-${index}`, T0 + index, 1, 5));
  const backup = JSON.stringify({ sweepbook: 'backup', made: T0, library: { ...library, records: many } });
  const ends: { readonly done: boolean; readonly written: number }[] = [];
  let done = false;
  await cutAgainAndAgain(
    async ({ worker, openTab }, time) => {
      await put(worker, stored);
      const page = await openTab();
      await click(page, 'Logbook');
      await click(page, 'Backup and tables');
      await giveFile(page, 'json', 'backup.json', backup);
      await says(page, '600 new');
      await page.locator('::-p-aria(Join it with what is here)').click();
      await pause((time * IMPORT_TAKES) / CUTS);
      done = await saysNow(page, 'Done.');
    },
    async ({ worker }) => {
      const found = await kept(worker);
      expect(found).toMatchObject({ 'record:r1': storedAgain['record:r1'], 'entry:e1': storedAgain['entry:e1'] });
      ends.push({ done, written: Object.keys(found).filter((key) => key.startsWith('record:new-')).length });
    },
  );
  expect(ends.filter(({ written }) => written !== 0 && written !== 600)).toEqual([]);
  expect(ends.filter((end) => end.done && end.written === 0)).toEqual([]);
  console.log(`killed during an import: ${ends.filter(({ written }) => written > 0).length} of ${CUTS} were already whole, the others untouched`);
});

test('killed 20 times during a migration: everything stored by version 1 is there in the end', async () => {
  const version1: Record<string, unknown> = JSON.parse(readFileSync(join('tests', 'fixtures', 'store-1.json'), 'utf8'));
  const records = Object.keys(version1).filter((key) => key.startsWith('record:'));
  let before = 0;
  await cutAgainAndAgain(
    async ({ worker, openTab }, time) => {
      await put(worker, version1);
      void openTab().catch(() => undefined);
      await pause((time * MIGRATION_TAKES) / CUTS);
    },
    async ({ worker, openTab }) => {
      const left = await kept(worker);
      if (left['version'] === 1) before++;
      for (const key of records) expect(left[key]).toEqual(version1[key]);
      const page = await openTab();
      await page.waitForSelector('h1');
      await expect.poll(async () => (await kept(worker))['version']).toBe(VERSION);
      const found = await kept(worker);
      for (const key of records) expect(found[key]).toEqual(version1[key]);
      await page.close();
    },
  );
  console.log(`killed during a migration: ${before} of ${CUTS} were still of version 1, the others already of version ${VERSION}`);
});

/** What the panel says at this moment; a page that is gone says nothing. */
const saysNow = (page: Page, text: string): Promise<boolean> =>
  page.evaluate((wanted) => document.querySelector('main')?.textContent?.includes(wanted) ?? false, text).catch(() => false);
