// @vitest-environment happy-dom
// Contract of the version that was seen last: remembered from one page to the next, and none where site data is forbidden.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Installed } from '../../src/platform/installed.ts';

async function inBrowser(more: object = {}): Promise<Installed> {
  vi.stubGlobal('browser', { runtime: { getManifest: () => ({ version: '0.2.0' }) } });
  vi.stubGlobal('chrome', { action: {}, ...more });
  vi.resetModules();
  return (await import('../../src/platform/installed.ts')).installed;
}

beforeEach(() => localStorage.clear());
afterEach(() => vi.unstubAllGlobals());

test('none was seen before the first, and this one from then on', async () => {
  const installed = await inBrowser();
  expect(installed.lastSeen()).toBeNull();
  installed.see();
  expect((await inBrowser()).lastSeen()).toBe('0.2.0');
});

test('where site data is forbidden none was seen, and nothing breaks', async () => {
  const installed = await inBrowser();
  const refuse = (): never => {
    throw new DOMException('forbidden', 'SecurityError');
  };
  vi.stubGlobal('localStorage', { getItem: refuse, setItem: refuse });
  expect(() => installed.see()).not.toThrow();
  expect(installed.lastSeen()).toBeNull();
});

test('the page of shortcuts can be opened only where there is a side panel', async () => {
  expect((await inBrowser()).openShortcuts).toBeNull();
  expect((await inBrowser({ sidePanel: {} })).openShortcuts).not.toBeNull();
});
