// Contract of a power cut in the middle of a write to a real Chromium's disk: what is saved after it is there at every start to come. The
// torn end is made by hand: the log of storage.local is cut off within its last write.
import { readdirSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { launchChromium } from './chromium.ts';
import { click, kept, put, says, stored } from './library/shelves.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** Within the last write, which is longer. */
const TORN = 300;

function tear(profile: string): void {
  const stores = join(profile, 'Default', 'Local Extension Settings');
  const [store = ''] = readdirSync(stores);
  const [log = ''] = readdirSync(join(stores, store)).filter((name) => name.endsWith('.log'));
  const path = join(stores, store, log);
  truncateSync(path, statSync(path).size - TORN);
}

const lensesIn = (all: Record<string, unknown>): string[] => (all['kit'] as { lenses: { name: string }[] }).lenses.map(({ name }) => name);

test('a lens saved at the first start after a torn write is there at the second and the third', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const first = await launchChromium({ profile });
  await put(first.worker, stored);
  await put(first.worker, { torn: 'x'.repeat(2 * TORN) });
  await first.kill();
  tear(profile);

  const second = await launchChromium({ profile });
  expect(await kept(second.worker)).not.toHaveProperty('torn');
  const page = await second.openTab();
  await click(page, 'Kit');
  await click(page, 'Add a lens');
  await page.locator('::-p-aria([name="Name"][role="textbox"])').fill('Corvid 85');
  await click(page, 'Save');
  await says(page, 'Corvid 85');
  await expect.poll(async () => lensesIn(await kept(second.worker))).toContain('Corvid 85');
  await second.kill();

  for (let start = 2; start <= 3; start += 1) {
    const again = await launchChromium({ profile });
    const logbook = await again.openTab();
    await click(logbook, 'Kit');
    await says(logbook, 'Corvid 85');
    expect(lensesIn(await kept(again.worker))).toEqual(['Orrin 85 f/1.8', 'Corvid 85']);
    await again.kill();
  }
});
