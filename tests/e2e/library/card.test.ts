// Contract of the card for the bag: a page of the right size, with every value of the body.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pictureFile } from '../screens.ts';
import { put, started } from './shelves.ts';
import { storedShop } from './shop.ts';

test('the card of a body prints its values on A6 and on A4, with their dates and how sure they are', async () => {
  const chromium = await started();
  await put(chromium.worker, storedShop(Date.now()));
  const page = await chromium.openTab('card.html#b', { width: 500, height: 700 });
  await page.waitForSelector('table');
  expect(await page.evaluate(() => document.body.textContent)).toMatch(/Velde M1.*Orrin 70-200.*\+1.*entered .*\+3.*entered/s);
  // In points: 105 by 148 mm, and 210 by 297 mm.
  for (const [size, points] of [
    ['A6', [298, 420]],
    ['A4', [595, 842]],
  ] as const) {
    await page.locator(`::-p-aria(${size})`).click();
    const file = pictureFile(`card-${size}`).replace(/png$/, 'pdf');
    await page.pdf({ path: file, preferCSSPageSize: true });
    const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(readFileSync(file, 'latin1')) ?? [];
    for (const [index, side] of [width, height].entries()) expect(Math.abs(Number(side) - (points[index] ?? 0))).toBeLessThanOrEqual(2);
  }
});
