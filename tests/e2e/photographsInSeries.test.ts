// Contract of several pictures in a real Chromium: a check finds a shift, a bracket its centre. A bracket that is kept is there after the
// panel was closed, in the history with its crops, in what to enter, in the backup, on the page for the workshop and on the card; erased,
// it is nowhere. What these tests look at has no fault.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { readBackup } from '../../src/logbook/backup/backup.ts';
import { rigPicture } from '../photographs/rigPicture.ts';
import { faults } from './faults.ts';
import { kept } from './library/shelves.ts';
import { giveShots, lookAtAllOf, photographsOfSituation, situationPage } from './photographsSeat.ts';
import { giveBytes } from './pictureFiles.ts';
import { pngFile } from '../pngPixels.ts';
import { shownOn } from './screens.ts';
import { choose, until, untilText } from './seat.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** The middle of a picture, as if it was cropped. */
function cut({ width, height, rgba }: ReturnType<typeof rigPicture>, share: number): Parameters<typeof pngFile>[0] {
  const size = { width: Math.round(width * share), height: Math.round(height * share) };
  const [left, top] = [(width - size.width) >> 1, (height - size.height) >> 1];
  const kept = new Uint8ClampedArray(4 * size.width * size.height);
  for (let y = 0; y < size.height; y += 1) {
    const from = 4 * ((top + y) * width + left);
    kept.set(rgba.subarray(from, from + 4 * size.width), 4 * y * size.width);
  }
  return { ...size, rgba: kept };
}

test('Chromium: a check of the value finds a shift against live view, and asks for live view where it is missing', { timeout: 240_000 }, async () => {
  const { page, seat } = await photographsOfSituation();
  await seat.click('input[value="check"]');
  await untilText(seat, 'Turn focus far to the near side');
  await giveShots(seat, [0, 15, 13, 14.5, 14, 15.2]);
  await giveBytes(seat, 'shot-7.png', pngFile(cut(rigPicture(0), 0.8)));
  const { text } = await until(seat, 'the result', (seen) => seen.text.includes('What the pictures show together'), 120_000);
  expect(text).toContain('7 of 7 pictures read.');
  expect(text).toMatch(/Shifted: with \+5, focus falls 1[345] mm ± [\d.]+ mm behind the target\./);
  expect(text).toMatch(/would undo it, by an estimate of what a step is worth: try/);
  expect(text).toContain('Taken from another distance, or cropped. It stays out of this series.');
  expect(text).not.toContain('No picture was focused in live view');
  await choose(seat, 'Figures of the series');
  await choose(seat, 'Each picture');
  await lookAtAllOf(page, 'check');
  await seat.click('.pictures li:first-child input[value="near"]');
  const without = await untilText(seat, 'No picture was focused in live view');
  expect(without.text).toContain('6 shots with autofocus.');
  expect(await page.$$eval('.pictures li:nth-child(2) input:checked', ([input]) => (input as HTMLInputElement).value)).toBe('far');
});

test(
  'Chromium: a bracket of corrections finds its centre and what a step is worth; kept, it is wherever the logbook is, and nowhere once it is erased',
  {
    timeout: 300_000,
  },
  async () => {
    const { chromium, page, seat } = await photographsOfSituation();
    await seat.click('input[value="bracket"]');
    await untilText(seat, 'Then take one picture with autofocus at each of these values');
    await choose(seat, 'Set up for pictures');
    await lookAtAllOf(page, 'bracket-order');
    const order = await page.$$eval('.values li', (items) => items.map(({ textContent }) => Number(textContent?.replace('\u2212', '-'))));
    expect(order).toHaveLength(10);
    // Three millimetres a step, focus on the target at +7: the middle of the band that was measured.
    await giveShots(seat, [0, ...order.map((value, at) => 3 * (value - 7) + (at % 2 === 0 ? 0.7 : -0.7))]);
    const { text } = await until(seat, 'the result', (seen) => seen.text.includes('What the pictures show together'), 180_000);
    expect(text).toMatch(/The pictures put the centre at \+(6\.[5-9]|7|7\.[1-5]) \(95% between/);
    expect(text).toMatch(/It agrees with the band’s centre, \+7;/);
    expect(text).toContain('Value to enter: +7.');
    expect(text).toMatch(/One step moves focus by (2\.9|3|3\.1) mm ± [\d.]+ mm at the target\./);
    await choose(seat, 'Figures of the series');
    await choose(seat, 'Each picture');
    await lookAtAllOf(page, 'bracket');

    await choose(seat, 'Keep in the logbook');
    await untilText(seat, 'It is in the history of this situation.');
    expect(await faults(page, 'bracket-kept')).toEqual([]);
    await page.close();

    const again = await situationPage(chromium);
    const { text: history } = await untilText(again.seat, 'in a bracket of 10 shots');
    expect(history).toMatch(
      /centre \+(6\.[5-9]|7|7\.[1-5]) in a bracket of 10 shots, .*agrees with the band’s centre.*one step moves focus by (2\.9|3|3\.1) mm/,
    );
    await choose(again.seat, 'Evidence');
    await choose(again.seat, 'See its crops, or erase it');
    await again.page.waitForSelector('.crops img');
    expect(
      await again.page.$$eval('.crops img', (images) =>
        images.map((image) => [(image as HTMLImageElement).alt, (image as HTMLImageElement).naturalWidth > 10]),
      ),
    ).toEqual([
      ['Focused in live view', true],
      ['Focused with autofocus', true],
    ]);
    expect(await faults(again.page, 'history-photographed')).toEqual([]);

    await choose(again.seat, 'Entering');
    await choose(again.seat, 'What to enter for this lens');
    await untilText(again.seat, 'puts the centre at');
    expect(await shownOn(again.page)).toMatch(
      /the bracket of .* puts the centre at \+.*That agrees with the band’s centre, \+7\. Together they give \+.*, which counts here\./,
    );
    expect(await faults(again.page, 'entering-photographed')).toEqual([]);

    const workshop = await chromium.openTab('workshop.html#r2', { width: 794, height: 1123 });
    await workshop.waitForSelector('.shown');
    expect(await shownOn(workshop)).toMatch(/What photographs showed.*centre \+.* in a bracket of 10 shots/);
    expect(await faults(workshop, 'workshop-photographed')).toEqual([]);

    expect(await backedUp(again.page)).toMatchObject([{ proof: { is: 'bracket' }, practice: false }]);

    const last = await situationPage(chromium);
    await choose(last.seat, 'Evidence');
    await choose(last.seat, 'See its crops, or erase it');
    await choose(last.seat, 'Erase it from the history');
    await until(last.seat, 'a history without it', (seen) => !seen.text.includes('in a bracket of 10 shots'));
    expect(Object.keys(await kept(chromium.worker)).filter((key) => key.startsWith('proof:'))).toEqual([]);
    await workshop.reload();
    await workshop.waitForSelector('table');
    expect(await shownOn(workshop)).not.toContain('What photographs showed');
  },
);

/** What photographs showed, as a backup file that is written from here holds it. */
async function backedUp(page: Page): Promise<readonly unknown[]> {
  const downloads = temporaryFolder();
  onTestFinished(() => removeFolder(downloads));
  await page.bringToFront();
  const driver = await page.createCDPSession();
  await driver.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: downloads });
  await page.locator('::-p-aria(Back)').click();
  await page.locator('::-p-aria(Back)').click();
  await page.locator('::-p-aria(Backup and tables)').click();
  await page.locator('::-p-aria(Write a backup file)').click();
  await expect.poll(() => readdirSync(downloads)).toEqual([expect.stringMatching(/^sweepbook-backup-.*\.json$/)]);
  const read = readBackup(readFileSync(join(downloads, readdirSync(downloads)[0] ?? ''), 'utf8'));
  return read.ok ? read.value.library.proofs : [];
}
