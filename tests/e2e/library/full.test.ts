// Contract of a storage that is full while a backup comes in: one sentence, nothing of before is lost, nothing is written in
// part, and all of it is written once there is room.
import { expect, test } from 'vitest';
import { sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { fillUp, withCeiling } from '../ceiling.ts';
import { click, giveFile, kept, library, says, started, storedAgain } from './shelves.ts';

const MANY = Array.from({ length: 100 }, (_, index) => sweepRecord(`new-${index}`, T0 + index, 1, 5));
const BACKUP = JSON.stringify({ sweepbook: 'backup', made: T0, library: { ...library, records: MANY } });

test('a backup that finds no room is told, changes nothing on the disk, and is there whole after “Try now”', async () => {
  const chromium = await started({ extension: withCeiling() });
  const arrived = async () => Object.keys(await kept(chromium.worker)).filter((key) => key.startsWith('record:new-')).length;
  const page = await chromium.openTab();
  await click(page, 'Logbook');
  await click(page, 'Backup and tables');
  await giveFile(page, 'json', 'backup.json', BACKUP);
  await says(page, 'Nothing is changed yet.');
  await fillUp(chromium.worker, 2000);
  await click(page, 'Join it with what is here');
  await says(page, 'Nothing can be saved just now (');
  expect(await kept(chromium.worker)).toMatchObject(storedAgain);
  expect(await arrived()).toBe(0);

  await chromium.worker.evaluate(() => chrome.storage.local.remove('filler'));
  await click(page, 'Try now');
  await expect.poll(arrived).toBe(100);
  expect(await kept(chromium.worker)).toMatchObject(storedAgain);
  await page.waitForFunction(() => !document.querySelector('main')?.textContent?.includes('Nothing can be saved'));
});
