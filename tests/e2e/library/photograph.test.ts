// Contract of filling the kit in from a photograph in a real Chromium: what was ticked is in the kit, whatever file is given
// is read at once or refused in a sentence, and nothing is sent anywhere.
import { closeSync, openSync, truncateSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { jpegFile, tiffFile, VELDE } from '../../kit/photographFile.ts';
import { removeFolder, temporaryFolder } from '../temporary.ts';
import { click, kept, says, started } from './shelves.ts';

test('a photograph of 200 MB fills in what is ticked, damaged ones are refused in a sentence, and nothing leaves the computer', async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const photograph = jpegFile(tiffFile(VELDE));
  const file = (name: string, bytes: Uint8Array): string => {
    writeFileSync(join(folder, name), bytes);
    return join(folder, name);
  };
  const large = file('large.jpg', photograph);
  truncateSync(large, 200_000_000);
  const emptyAndLarge = join(folder, 'empty.jpg');
  const handle = openSync(emptyAndLarge, 'w');
  writeSync(handle, new Uint8Array(1), 0, 1, 199_999_999);
  closeSync(handle);

  const chromium = await started();
  const page = await chromium.openTab();
  const sent: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith('chrome-extension://')) sent.push(request.url());
  });
  await click(page, 'Kit');
  const field = await page.waitForSelector('input[type="file"]');
  const give = async (path: string): Promise<void> => void (await (field as unknown as { uploadFile(path: string): Promise<void> }).uploadFile(path));

  await give(file('cut.jpg', photograph.subarray(0, 60)));
  await says(page, 'The camera data of this photograph cannot be read. Choose another one.');
  await give(file('letter.jpg', new TextEncoder().encode('Dear all')));
  await says(page, 'This file is no photograph that can be read here. Choose a JPEG as the camera wrote it.');
  await give(emptyAndLarge);
  await says(page, 'This file is no photograph that can be read here');

  await give(large);
  await says(page, 'Taken on 4 Mar 2026. At 85 mm. f/1.8. Focused at 4.25 m.');
  for (const label of ['Body model: Velde M1', 'Lens serial number: A12']) await page.locator(`::-p-text(${label})`).click();
  await click(page, 'Use ticked details');
  await says(page, 'The details are in the kit.');
  const { bodies, lenses } = (await kept(chromium.worker))['kit'] as { bodies: object[]; lenses: object[] };
  expect([bodies, lenses]).toMatchObject([
    [{ id: 'b' }, { model: 'Velde M1', serial: null }],
    [{ id: 'l' }, { model: null, serial: 'A12' }],
  ]);
  expect(sent).toEqual([]);
});
