// Contract of the card for the bag: a page of the right size, with every value of the body.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { accessibilityFaults } from '../axe.ts';
import { pictureFile } from '../screens.ts';
import { started } from './shelves.ts';

test('the card of a body prints its values on paper', async () => {
  const chromium = await started();
  const page = await chromium.openTab('card.html#b', { width: 500, height: 700 });
  await page.waitForSelector('table');
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(await page.evaluate(() => document.body.textContent)).toMatch(/Velde M1.*Orrin 85.*\+5.*entered/s);
  const file = pictureFile('card').replace(/png$/, 'pdf');
  await page.pdf({ path: file, preferCSSPageSize: true });
  // A6 is 105 by 148 mm: 298 by 420 points.
  const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(readFileSync(file, 'latin1')) ?? [];
  expect([Number(width), Number(height)].map((points) => Math.round(points / 10) * 10)).toEqual([300, 420]);
});
