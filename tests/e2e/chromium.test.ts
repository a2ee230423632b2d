// Contract of the ground the other end-to-end tests stand on: a stock Chromium with the built extension.
import { onTestFinished, test, expect } from 'vitest';
import { accessibilityFaults } from './axe.ts';
import { launchChromium } from './chromium.ts';
import { picture, wear } from './screens.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

test('the toolbar button opens the side panel with its heading, without accessibility faults in either theme', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const panel = await chromium.openPanel();
  await panel.waitForSelector('h1');
  for (const theme of ['dark', 'light'] as const) {
    await wear(panel, theme);
    await picture(panel, `panel-${theme}`);
    expect(await accessibilityFaults(panel)).toEqual([]);
  }
});

test('the browser really assigns the shortcut that opens the panel', async () => {
  const chromium = await launchChromium();
  onTestFinished(chromium.close);
  const commands = await chromium.worker.evaluate(() => chrome.commands.getAll());
  expect(commands.map(({ name, shortcut }) => ({ name, shortcut }))).toEqual([{ name: '_execute_action', shortcut: 'Alt+Shift+S' }]);
});

test('what was stored before the browser is killed is there when it starts again', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const first = await launchChromium({ profile });
  await first.worker.evaluate(() => chrome.storage.local.set({ kept: 7 }));
  await first.kill();

  const second = await launchChromium({ profile });
  onTestFinished(second.close);
  expect(await second.worker.evaluate(() => chrome.storage.local.get('kept'))).toEqual({ kept: 7 });
});
