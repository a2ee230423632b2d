// Contract of a power cut while much is written: nothing acknowledged is lost, and nothing is written in part.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { launchChromium } from '../chromium.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { click, giveFile, kept, library, put, stored, storedAgain } from './shelves.ts';

test('killed 20 times during an import: each time all of it is there or nothing of it, and all that was there before', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const many = Array.from({ length: 200 }, (_, index) => sweepRecord(`new-${index}`, T0 + index, 1, 5));
  const backup = JSON.stringify({ sweepbook: 'backup', made: T0, library: { ...library, records: many } });
  const whole: number[] = [];
  for (let time = 0; time < 20; time++) {
    const chromium = await launchChromium({ profile });
    await chromium.worker.evaluate(() => chrome.storage.local.clear());
    await put(chromium.worker, stored);
    const page = await chromium.openTab();
    await click(page, 'Logbook');
    await click(page, 'Backup and tables');
    await giveFile(page, 'json', 'backup.json', backup);
    const joining = await page.waitForSelector('::-p-aria(Join it with what is here)');
    void joining?.click().catch(() => undefined);
    await new Promise((go) => setTimeout(go, time * 12));
    await chromium.kill();
    const again = await launchChromium({ profile });
    const found = await kept(again.worker);
    await again.close();
    expect(found).toMatchObject({ 'record:r1': storedAgain['record:r1'], 'entry:e1': storedAgain['entry:e1'] });
    whole.push(Object.keys(found).filter((key) => key.startsWith('record:new-')).length);
  }
  expect(whole.filter((count) => count !== 0 && count !== 200)).toEqual([]);
  console.log(`killed during an import: ${whole.filter((count) => count === 200).length} of 20 were already whole, the others untouched`);
});

test('killed 20 times during a migration: everything stored by version 1 is there in the end', async () => {
  const version1: Record<string, unknown> = JSON.parse(readFileSync(join('tests', 'fixtures', 'store-1.json'), 'utf8'));
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const records = Object.keys(version1).filter((key) => key.startsWith('record:'));
  for (let time = 0; time < 20; time++) {
    const chromium = await launchChromium({ profile });
    await chromium.worker.evaluate(() => chrome.storage.local.clear());
    await put(chromium.worker, version1);
    void chromium.openTab().catch(() => undefined);
    await new Promise((go) => setTimeout(go, 20 + time * 15));
    await chromium.kill();
    const again = await launchChromium({ profile });
    const page = await again.openTab();
    await page.waitForSelector('h1');
    await expect.poll(async () => (await kept(again.worker))['version']).toBe(2);
    const found = await kept(again.worker);
    expect(Object.keys(found)).toEqual(expect.arrayContaining(records));
    for (const key of records) expect(found[key]).toEqual(version1[key]);
    await again.close();
  }
});
