// Contract of a lost database: each of the two places where everything is kept heals the other, and the person is told.
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from '../chromium.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { click, kept, put, says, started, stored, storedAgain } from './shelves.ts';

test('the copies wiped between two runs: nothing is lost, and a new copy is made', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const first = await launchChromium({ profile });
  await put(first.worker, stored);
  const before = await first.openTab();
  await before.waitForSelector('h1');
  await first.close();
  removeFolder(join(profile, 'Default', 'IndexedDB'));
  const second = await launchChromium({ profile });
  onTestFinished(second.close);
  const page = await second.openTab();
  await click(page, 'Logbook');
  await says(page, 'Orrin 85');
  expect(await kept(second.worker)).toMatchObject(storedAgain);
  await click(page, 'Backup and tables');
  await says(page, 'Bring back ');
});

test('the store wiped with copies left: the person is told in one sentence, and one press brings everything back', async () => {
  const chromium = await started();
  const first = await chromium.openTab();
  await first.waitForSelector('h1');
  await expect.poll(() => first.evaluate(async () => (await indexedDB.databases()).some(({ name }) => name === 'sweepbook'))).toBe(true);
  await new Promise((go) => setTimeout(go, 500));
  await first.close();
  await chromium.worker.evaluate(() => chrome.storage.local.clear());
  const page = await chromium.openTab();
  await says(page, 'Nothing is stored here any more, but there is a copy of everything');
  await click(page, 'Bring it back');
  await expect.poll(async () => Object.keys(await kept(chromium.worker))).toContain('record:r2');
  expect(await kept(chromium.worker)).toMatchObject(storedAgain);
});
