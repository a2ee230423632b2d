// Contract of two windows on one logbook: who saves later on a state that has changed meanwhile is refused with a sentence,
// and neither what was saved nor what was typed is lost.
import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { click, kept, says, started } from './shelves.ts';

const NAME = 'input[type="text"]';

async function openLens(page: Page): Promise<void> {
  await click(page, 'Kit');
  await says(page, 'Orrin 85 f/1.8');
  await click(page, 'Orrin 85 f/1.8');
  await page.waitForSelector('[data-screen="lens"] form');
}

async function rename(page: Page, name: string): Promise<void> {
  await page.bringToFront();
  const field = await page.waitForSelector(NAME);
  await field?.click({ count: 3 });
  await page.keyboard.type(name);
  await click(page, 'Save');
}

test('two windows edit one lens: the later save is refused, both texts are still there, and a second look saves', async () => {
  const chromium = await started();
  const [one, other] = [await chromium.openTab(), await chromium.openTab()];
  for (const page of [one, other]) {
    await page.bringToFront();
    await openLens(page);
  }
  const nameKept = async () => ((await kept(chromium.worker))['kit'] as { lenses: { name: string }[] }).lenses[0]?.name;

  await rename(one, 'Orrin 85, mine');
  await expect.poll(nameKept).toBe('Orrin 85, mine');
  await rename(other, 'Orrin 85, lent');
  await says(other, 'This lens was changed in another window. Open it again, then make your change.');
  expect(await nameKept()).toBe('Orrin 85, mine');
  expect(await other.$eval(NAME, (field) => (field as HTMLInputElement).value)).toBe('Orrin 85, lent');

  await click(other, 'Back');
  await click(other, 'Orrin 85, mine');
  await rename(other, 'Orrin 85, lent');
  await expect.poll(nameKept).toBe('Orrin 85, lent');
  await one.bringToFront();
  await says(one, 'Orrin 85, lent');
});
