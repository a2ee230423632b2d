// @vitest-environment happy-dom
// Contract of the page after the first install: it shows the button and says the keys that the browser really has.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

async function opened(shortcut: string): Promise<string> {
  vi.stubGlobal('chrome', { commands: { getAll: () => Promise.resolve([{ name: '_execute_action', shortcut }]) }, action: {} });
  document.body.innerHTML = '<div id="welcome"></div>';
  vi.resetModules();
  await import('../../src/pages/welcome.tsx');
  await vi.waitUntil(() => document.querySelector('main'), { timeout: 20_000 });
  return document.body.textContent ?? '';
}

beforeEach(() => localStorage.clear());
afterEach(() => vi.unstubAllGlobals());

test('the button is drawn, named in words, and the keys are the browser’s', async () => {
  expect(await opened('Ctrl+Shift+7')).toContain('Or press Ctrl+Shift+7.');
  expect(document.querySelector('svg')?.getAttribute('aria-label')).toContain('the button of Sweepbook');
  expect(document.title).toBe('Sweepbook is installed');
});

test('where the browser gave the keys to none, none are named', async () => {
  const text = await opened('');
  expect(text).toContain('Press its button');
  expect(text).not.toContain('Or press');
});

test('it is in the language that the panel wears', async () => {
  localStorage.setItem('language', 'de de');
  expect(await opened('Alt+Umschalt+S')).toContain('Oder drücken Sie Alt+Umschalt+S.');
});
