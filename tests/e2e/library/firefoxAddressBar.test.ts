// Contract of the address bar in a real Firefox: its own list of results shows the last value for what is typed after the
// keyword.
import { expect, onTestFinished, test } from 'vitest';
import { launchFirefox } from '../firefox.ts';
import { firefoxWindow } from '../firefox-window.ts';
import { stored } from './shelves.ts';

/** Runs in the browser's own window: types into the address bar, and reads the lines below it once `wanted` is among them. */
const typeAndRead = `async (typed, wanted) => {
  gURLBar.focus();
  gURLBar.search(typed);
  for (let tries = 0; tries < 200; tries += 1) {
    const lines = [...document.querySelectorAll('#urlbar-results .urlbarView-row, .urlbarView-row')].map((row) => row.textContent);
    if (lines.some((line) => line.includes(wanted))) return lines;
    await new Promise((go) => setTimeout(go, 50));
  }
  return [...document.querySelectorAll('.urlbarView-row')].map((row) => row.textContent);
}`;

test('the list under the address bar shows the last value for what follows the keyword', async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.evaluate((all) => browser.storage.local.set(all as Record<string, unknown>), stored);
  const window = await firefoxWindow(firefox.browser);
  expect(await window.call(typeAndRead, 'sb 85', '+5')).toContainEqual(expect.stringContaining('+5  Orrin 85 f/1.8 · Velde M1 · 85\u00a0mm · 4.25\u00a0m'));
  expect(await window.call(typeAndRead, 'sb zzz', 'Nothing')).toContainEqual(expect.stringContaining('Nothing in the logbook fits. Try fewer letters.'));
});
