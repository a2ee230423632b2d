// Contract of a large logbook: while it is brought in, read and written out the panel tells how far it is and answers keys; cut
// off by a power cut in the middle of it, a start finds what was there before, whole.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { launchChromium, type Chromium } from '../chromium.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { click, giveFile, kept, library, put, says, stored, storedAgain } from './shelves.ts';

const MANY = 3000;
const BACKUP = JSON.stringify({
  sweepbook: 'backup',
  made: T0,
  library: { ...library, records: Array.from({ length: MANY }, (_, index) => sweepRecord(`new-${index}`, T0 + index, 1, 5)) },
});

/** Runs in the panel: notes from now on what it tells of how far something is. */
function noteBars(): void {
  const told: string[] = [];
  Object.assign(globalThis, { told });
  const look = (): void => {
    const said = document.querySelector('main label:has(+ progress)')?.textContent ?? '';
    if (said !== '' && said !== told.at(-1)) told.push(said);
  };
  new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true });
}

const toldIn = (page: Page): Promise<string[]> => page.evaluate(() => (globalThis as unknown as { told: string[] }).told);

/** Shares that grow, each told in one sentence. */
function grow(told: readonly string[], sentence: string): void {
  const shares = told.filter((one) => one.startsWith(sentence)).map((one) => Number(/(\d+)%/.exec(one)?.[1]));
  expect(shares.length, `“${sentence}” in ${told.join(' | ')}`).toBeGreaterThan(1);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
}

async function toFiles(page: Page): Promise<void> {
  await click(page, 'Logbook');
  await click(page, 'Backup and tables');
}

const arrivedIn = ({ worker }: Chromium): Promise<number> =>
  worker.evaluate(async () => (await chrome.storage.local.getKeys()).filter((key) => key.startsWith('record:new-')).length);
const written = async (all: Promise<Record<string, unknown>>): Promise<number> => Object.keys(await all).filter((key) => key.startsWith('record:new-')).length;

test('brought in, read at the next start and written out, it tells how far that is, and all of it is there', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  await put(chromium.worker, stored);
  const page = await chromium.openTab();
  await toFiles(page);
  await page.evaluate(noteBars);
  await giveFile(page, 'json', 'backup.json', BACKUP);
  await says(page, `3,000 new`);
  await click(page, 'Join it with what is here');
  await says(page, 'Done.');
  grow(await toldIn(page), 'Bringing it in: ');
  expect(await written(kept(chromium.worker))).toBe(MANY);
  expect(await kept(chromium.worker)).toMatchObject(storedAgain);
  expect(await kept(chromium.worker)).not.toHaveProperty('bringing');

  await page.evaluateOnNewDocument(noteBars);
  await page.reload();
  await page.waitForFunction(() => document.querySelector('main')?.dataset['screen'] === 'start');
  await says(page, '3,002 records are in no backup.');
  grow(await toldIn(page), 'Reading the logbook: ');
  await toFiles(page);
  await click(page, 'Write a backup file');
  await says(page, 'The newest backup is from ');
  expect(await toldIn(page)).toContainEqual(expect.stringMatching(/^Writing the backup: \d+%\.$/));
}, 120_000);

test('cut off while it is brought in, the next start puts back what was there before, tells it, and it can be brought in again', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const first = await launchChromium({ profile });
  await put(first.worker, stored);
  const page = await first.openTab();
  await toFiles(page);
  await giveFile(page, 'json', 'backup.json', BACKUP);
  await says(page, `3,000 new`);
  await click(page, 'Join it with what is here');
  await expect.poll(() => arrivedIn(first), { interval: 20, timeout: 20_000 }).toBeGreaterThan(100);
  await first.kill();

  const second = await launchChromium({ profile });
  onTestFinished(second.close);
  const left = await written(kept(second.worker));
  expect([left > 0, left < MANY]).toEqual([true, true]);
  const back = await second.openTab();
  await says(back, 'Bringing in a logbook was broken off, so everything is as it was before.');
  expect(await written(kept(second.worker))).toBe(0);
  expect(await kept(second.worker)).toMatchObject(storedAgain);
  expect(await kept(second.worker)).not.toHaveProperty('bringing');
  await toFiles(back);
  await giveFile(back, 'json', 'backup.json', BACKUP);
  await says(back, `3,000 new`);
  await click(back, 'Join it with what is here');
  await says(back, 'Done.');
  expect(await written(kept(second.worker))).toBe(MANY);
}, 120_000);
