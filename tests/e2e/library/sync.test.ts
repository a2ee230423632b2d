// Contract of last values across computers in a real Chromium: nothing is in the browser's sync until the person asks for
// it, and what another computer has put there arrives and is told.
import { expect, test } from 'vitest';
import { T0 } from '../../logbook/libraryWith.ts';
import { click, kept, says, started } from './shelves.ts';

test('a yes puts the last value into the sync, a later one from elsewhere stands here beside the old one, a no takes ours out', async () => {
  const chromium = await started();
  const synced = () => chromium.worker.evaluate(() => chrome.storage.sync.get(null));
  const page = await chromium.openTab();
  await click(page, 'Settings');
  await says(page, 'Carry the last values between them');
  await page.locator('summary ::-p-text(Logbook)').click();
  expect(await synced()).toEqual({});
  const toggle = () => page.locator('::-p-text(Carry the last values)').click();
  await toggle();
  await expect.poll(async () => JSON.stringify(await synced())).toContain('["e1",5,');

  await chromium.worker.evaluate(
    (at) => chrome.storage.sync.set({ 'values/laptop/0': [['e2', 8, at, 'e', 'elsewhere', 'Velde M1', 'Orrin 85 f/1.8', 85, 4250]] }),
    T0 + 60 * 86_400_000,
  );
  await expect.poll(async () => (await kept(chromium.worker))['entry:e2'], { timeout: 10_000 }).toMatchObject({ value: 8, subject: { situation: 's' } });
  await says(page, 'Another computer has a later value for Orrin 85 f/1.8 on Velde M1: +8 in place of +5. Both stay in the history.');
  expect((await kept(chromium.worker))['entry:e1']).toMatchObject({ value: 5 });

  await toggle();
  await expect.poll(async () => Object.keys(await synced())).toEqual(['values/laptop/0']);
});
