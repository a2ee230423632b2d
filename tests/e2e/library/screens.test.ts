// Every screen of kit, logbook and files, empty and after years of use, at both widths in both themes: axe finds no fault,
// nothing is too wide, and a picture is kept for people to look at.
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { writeBackup } from '../../../src/logbook/backup/backup.ts';
import { moment } from '../../../src/units.ts';
import { jpegFile, tiffFile, VELDE } from '../../kit/photographFile.ts';
import { launchChromium } from '../chromium.ts';
import { faults } from '../faults.ts';
import { click, giveFile, library, put, says } from './shelves.ts';
import { storedShop } from './shop.ts';

const TABLE = 'Body;Lens;Focal length (mm);Value;Date\r\nVelde M2;Orrin 35 f/2;35;4;2026-01-02\r\nVelde M2;Orrin 35 f/2;x;4;03/04/2026\r\n';

async function opened(stored: Record<string, unknown>): Promise<{ page: Page; openTab: (path: string) => Promise<Page> }> {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  await put(chromium.worker, stored);
  const page = await chromium.openTab();
  await page.waitForSelector('[data-screen="start"]');
  return { page, openTab: chromium.openTab };
}

/** Opens what can be opened, so that all of it is looked at. */
const unfold = async (page: Page): Promise<void> => {
  await page.$$eval('main details', (all) => all.forEach((one) => (one.open = true)));
  await page.waitForFunction(() => !document.querySelector('main')?.textContent?.includes('Opening'));
};

test('the screens of an empty kit and logbook have no fault', async () => {
  const { page, openTab } = await opened({ version: 3 });
  const found: string[] = [];
  await click(page, 'Kit');
  await says(page, 'Use details from a photograph');
  found.push(...(await faults(page, 'kit-empty')));
  await click(page, 'Add a body');
  await says(page, 'Range of corrections');
  await click(page, 'Save');
  await says(page, 'Give it a name');
  found.push(...(await faults(page, 'body-refused')));
  await click(page, 'Back');
  await click(page, 'Add a converter');
  await says(page, 'Factor');
  found.push(...(await faults(page, 'converter')));
  await click(page, 'Back');
  await click(page, 'Back');
  await click(page, 'Plan');
  await says(page, 'A plan is made from your kit');
  found.push(...(await faults(page, 'plan-empty')));
  await click(page, 'Back');
  await click(page, 'Logbook');
  await says(page, 'Once a sweep is finished');
  found.push(...(await faults(page, 'logbook-empty')));
  await click(page, 'Backup and tables');
  await says(page, 'No backup was written');
  await says(page, 'bring them back from one');
  found.push(...(await faults(page, 'files-empty')));
  const card = await openTab('card.html#none');
  await card.waitForSelector('[role="alert"]');
  found.push(...(await faults(card, 'card-none')));
  expect(found).toEqual([]);
});

test('the screens of a full kit have no fault', async () => {
  const { page } = await opened(storedShop(Date.now()));
  const found: string[] = [];
  found.push(...(await faults(page, 'start-full')));
  await click(page, 'Kit');
  await says(page, 'They share one stored value');
  await giveFile(page, 'image', 'photograph.jpg', jpegFile(tiffFile(VELDE)));
  await says(page, 'Taken on');
  await unfold(page);
  found.push(...(await faults(page, 'kit-photograph')));
  await giveFile(page, 'image', 'letter.jpg', 'no photograph');
  await says(page, 'Choose a JPEG');
  await page.locator('[aria-label="Bodies"] li button').click();
  await says(page, 'Manual focus is switched');
  await unfold(page);
  found.push(...(await faults(page, 'body')));
  await click(page, 'Back');
  await page.locator('[aria-label="Lenses"] li button').click();
  await says(page, 'Closest focus');
  found.push(...(await faults(page, 'lens')));
  expect(found).toEqual([]);
});

test('the screens of a full logbook have no fault', async () => {
  const { page } = await opened(storedShop(Date.now()));
  const found: string[] = [];
  await click(page, 'Logbook');
  await says(page, 'Due again');
  await unfold(page);
  found.push(...(await faults(page, 'logbook-full')));
  await page.select('main details select', 'b');
  await page.waitForSelector('.glance svg[role="img"]');
  found.push(...(await faults(page, 'logbook-glance')));
  await page.locator('::-p-text(200\u00a0mm at 10\u00a0m)').click();
  await page.waitForSelector('[data-screen="situation"] .chart circle');
  await unfold(page);
  found.push(...(await faults(page, 'situation-full')));
  await page.locator('.history li button').click();
  await page.waitForSelector('[data-screen="record"] .strip');
  await unfold(page);
  await says(page, 'Before the first hold');
  await page.waitForSelector('.narrowing path');
  await page.focus('input[type="range"]');
  for (const _ of [1, 2, 3]) await page.keyboard.press('ArrowRight');
  await says(page, 'Hold 3 at');
  found.push(...(await faults(page, 'record-replay')));
  expect(found).toEqual([]);
});

test('what comes in and goes out has no fault', async () => {
  const { page, openTab } = await opened(storedShop(Date.now()));
  const found: string[] = [];
  await click(page, 'Logbook');
  await click(page, 'Backup and tables');
  await giveFile(page, 'json', 'backup.json', writeBackup(library, moment(Date.now())));
  await says(page, 'Nothing is changed yet.');
  await giveFile(page, 'csv', 'table.csv', TABLE);
  await says(page, 'What each heading means');
  await unfold(page);
  found.push(...(await faults(page, 'files-coming-in')));
  await click(page, 'Join it with what is here');
  await says(page, 'Bring back');
  found.push(...(await faults(page, 'files-copies')));
  const card = await openTab('card.html#b');
  await card.waitForSelector('table');
  found.push(...(await faults(card, 'card')));
  expect(found).toEqual([]);
});
