// Contract of the hearing check in a real browser: a word said five times into the microphone is taught and then heard, and
// the page has no fault in either theme at the narrowest widths.
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { accessibilityFaults } from './axe.ts';
import { launchChromium } from './chromium.ts';
import { picture, wear } from './screens.ts';
import { microphonePlaying, writeSpeechInRoom } from './spoken.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

test('a word said five times is taught, heard when it is said again, and erased', async () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const wav = join(folder, 'lesson.wav');
  const paces = [130, 136, 142, 148, 154, 140, 140];
  writeSpeechInRoom(
    wav,
    paces.map((pace, index) => ({ after: index === 0 ? 4 : 2, say: 'solid', pace })),
    0.01,
  );
  const chromium = await launchChromium({ args: microphonePlaying(wav) });
  onTestFinished(chromium.close);
  const page = await chromium.openTab('hearing.html', { width: 240, height: 700 });
  const shows = (text: string) => page.waitForFunction((part: string) => document.body.textContent?.includes(part), { timeout: 40_000 }, text);
  const click = (name: string) => page.locator(`::-p-aria([name="${name}"][role="button"])`).click();

  await click('Listen');
  await shows('Stand where you will work');
  await click('Teach solid');
  await shows('“solid” is taught.');
  await shows('Heard “solid”.');
  for (const theme of ['dark', 'light'] as const) {
    await wear(page, theme);
    for (const width of [240, 360]) {
      await page.setViewport({ width, height: 700 });
      await picture(page, `hearing-${theme}-${width}`);
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    }
  }
  await click('Erase everything I taught');
  await shows('Everything you taught is erased.');
});
