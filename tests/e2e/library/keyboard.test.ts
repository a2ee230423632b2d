// The logbook by keyboard alone, in a real Chromium: a body and a lens are described, a value from paper is written down by
// hand and entered, found again in a few letters, and saved in a backup file that comes back in.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { readBackup } from '../../../src/logbook/backup/backup.ts';
import { launchChromium } from '../chromium.ts';
import { choose, press, seatAt, tabTo, type, until, untilText } from '../seat.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { kept } from './shelves.ts';

test('from an empty kit to a value in the camera and a backup file, without a pointer', async () => {
  const downloads = temporaryFolder();
  onTestFinished(() => removeFolder(downloads));
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const page = await chromium.openTab();
  const driver = await page.createCDPSession();
  await driver.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: downloads });
  const seat = seatAt(page);
  const fill = async (name: string, text: string): Promise<void> => {
    await tabTo(seat, name);
    await type(seat, text);
  };
  await untilText(seat, 'Practice camera');

  await choose(seat, 'Kit');
  await untilText(seat, 'Use details from a photograph');
  await choose(seat, 'Add a body');
  await untilText(seat, 'Range of corrections');
  await fill('Name', 'Velde M1');
  await fill('How many lenses it remembers', '20');
  await choose(seat, 'Save');
  await untilText(seat, 'Add a lens');
  await choose(seat, 'Add a lens');
  await untilText(seat, 'Closest focus');
  await fill('Name', 'Orrin 85 f/1.8');
  await fill('shortest', '85');
  await choose(seat, 'Save');
  await until(seat, 'the kit', ({ screen, text }) => screen === 'kit' && text.includes('Orrin 85'));
  await press(seat, 'Escape');

  await until(seat, 'the start', ({ screen }) => screen === 'start');
  await fill('Look up a lens, or name a new one', 'orrin 85 f/1.8');
  await choose(seat, 'More');
  await untilText(seat, 'Put a value in by hand instead');
  await choose(seat, 'Put a value in by hand instead');
  await until(seat, 'its page', ({ screen }) => screen === 'situation');
  await fill('One end', '2');
  await fill('Other end', '9');
  await untilText(seat, 'The centre is +5.5.');
  await tabTo(seat, '+5');
  await press(seat, 'ArrowDown');
  await choose(seat, 'Save the value');
  await untilText(seat, 'Saved in the logbook.');
  await tabTo(seat, 'Value in the camera');
  await choose(seat, 'Save as entered');
  await untilText(seat, 'Noted: +6 is in the camera.');
  await press(seat, 'Escape');

  await until(seat, 'the start', ({ screen }) => screen === 'start');
  await choose(seat, 'Logbook');
  await until(seat, 'the logbook', ({ screen }) => screen === 'logbook');
  await fill('Find a body, lens, focal length or distance', '85 veld');
  expect((await untilText(seat, '1 found')).text).toContain('+6Orrin 85 f/1.885 mm at 4.25 m · Velde M1entered');
  await choose(seat, 'Read aloud');
  await until(seat, 'the answer', ({ announcement }) => announcement.includes('plus 6'));

  await choose(seat, 'Backup and tables');
  await untilText(seat, 'No backup was written from here yet.');
  await choose(seat, 'Write a backup file');
  await untilText(seat, 'The newest backup is from');
  await expect.poll(() => readdirSync(downloads)).toEqual([expect.stringMatching(/^sweepbook-backup-\d{4}-\d\d-\d\d\.json$/)]);
  const file = join(downloads, readdirSync(downloads)[0] ?? '');
  expect(readBackup(readFileSync(file, 'utf8'))).toMatchObject({
    ok: true,
    value: { library: { entries: [{ value: 6 }], byHand: [{ finding: { low: 2, high: 9, chosen: 6 } }] } },
  });

  await tabTo(seat, 'Bring a backup back in');
  // The page must know that its dialog is taken over before a key opens it.
  const dialog = page.waitForFileChooser();
  await page.evaluate(() => undefined);
  await press(seat, 'Enter');
  await (await dialog).accept([file]);
  await untilText(seat, 'Nothing is changed yet.');
  await choose(seat, 'Join it with what is here');
  await untilText(seat, 'Done.');
  expect(Object.keys(await kept(chromium.worker))).toContain('backup');
});
