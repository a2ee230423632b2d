// Contract of the first install: one tab says how the panel is opened; an update opens none, and a browser without a side panel neither.
import { afterEach, expect, test, vi } from 'vitest';

type Installed = (details: { reason: string }) => void;

async function started(withSidePanel: boolean) {
  const opened: string[] = [];
  const listeners: Installed[] = [];
  const event = { addListener: () => undefined };
  vi.stubGlobal('chrome', {
    runtime: { getURL: (path: string) => `ours/${path}`, onInstalled: { addListener: (one: Installed) => listeners.push(one) } },
    tabs: { create: ({ url }: { url: string }) => opened.push(url) },
    storage: { local: { get: () => Promise.resolve({}), onChanged: event } },
    omnibox: { onInputChanged: event, onInputEntered: event },
    action: { onClicked: event },
    ...(withSidePanel ? { sidePanel: { setPanelBehavior: () => undefined } } : {}),
  });
  vi.resetModules();
  await import('../../src/background/background.ts');
  return { opened, tell: (reason: string) => listeners.forEach((listener) => listener({ reason })) };
}

afterEach(() => vi.unstubAllGlobals());

test('the first install opens the page, once', async () => {
  const { opened, tell } = await started(true);
  tell('install');
  expect(opened).toEqual(['ours/welcome.html']);
});

test.each(['update', 'chrome_update', 'shared_module_update'])('%s opens nothing', async (reason) => {
  const { opened, tell } = await started(true);
  tell(reason);
  expect(opened).toEqual([]);
});

test('where the panel is a sidebar nothing is opened', async () => {
  const { opened, tell } = await started(false);
  tell('install');
  expect(opened).toEqual([]);
});
