// Contract of the ground the other end-to-end tests stand on: a stock Firefox with the built add-on.
import { expect, onTestFinished, test } from 'vitest';
import { launchFirefox } from './firefox.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

test('the toolbar button opens the sidebar with its heading, and it takes trusted clicks and keys', async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const sidebar = await firefox.openSidebar();
  await sidebar.waitFor(() => document.querySelector('main')?.dataset['screen'] === 'start');
  await sidebar.picture('firefox-sidebar');
  expect(await sidebar.evaluate(() => innerWidth)).toBeLessThan(260);

  await sidebar.evaluate(() => {
    const seen = (event: Event): void => {
      document.body.dataset['seen'] = `${document.body.dataset['seen'] ?? ''} ${event.type}:${event.isTrusted}`;
    };
    document.addEventListener('click', seen);
    document.addEventListener('keydown', seen);
  });
  await sidebar.click('h1');
  await sidebar.press('k');
  await sidebar.waitFor(() => document.body.dataset['seen'] === ' click:true keydown:true');
});

test('the browser really assigns the shortcut that opens the sidebar', async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const commands = await (await firefox.openSidebar()).evaluate(() => browser.commands.getAll());
  expect(commands.map(({ name, shortcut }) => ({ name, shortcut }))).toEqual([{ name: '_execute_sidebar_action', shortcut: 'Alt+Shift+S' }]);
});

test('the panel in a tab is drawn at the width of the sidebar', async () => {
  const firefox = await launchFirefox();
  onTestFinished(firefox.close);
  const panel = await firefox.openTab('h1');
  expect(await panel.evaluate(() => innerWidth)).toBe(250);
});

test('what was stored before the browser is killed is there when it starts again', async () => {
  const profile = temporaryFolder();
  onTestFinished(() => removeFolder(profile));
  const first = await launchFirefox({ profile });
  await (await first.openSidebar()).evaluate(() => browser.storage.local.set({ kept: 7 }));
  await first.kill();

  const second = await launchFirefox({ profile });
  onTestFinished(second.close);
  const kept = await (await second.openSidebar()).evaluate(() => browser.storage.local.get('kept'));
  expect(kept).toEqual({ kept: 7 });
});
