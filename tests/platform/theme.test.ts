// @vitest-environment happy-dom
// Contract of the theme: the page wears it, and wears it again before anything else is read.
import { afterEach, expect, test, vi } from 'vitest';
import { wearRememberedTheme, wearTheme } from '../../src/platform/theme.ts';

const page = document.documentElement;

afterEach(() => {
  vi.unstubAllGlobals();
  wearTheme(null);
});

test('a theme that is worn is remembered for the next page, and the system’s leaves nothing behind', () => {
  wearTheme('red');
  expect(page.dataset['theme']).toBe('red');
  delete page.dataset['theme'];
  wearRememberedTheme();
  expect(page.dataset['theme']).toBe('red');
  wearTheme(null);
  wearRememberedTheme();
  expect('theme' in page.dataset).toBe(false);
});

test('where site data is forbidden the theme is worn all the same', () => {
  vi.stubGlobal('localStorage', {
    getItem: () => {
      throw new DOMException('forbidden', 'SecurityError');
    },
    setItem: () => {
      throw new DOMException('forbidden', 'SecurityError');
    },
  });
  wearTheme('dim');
  wearRememberedTheme();
  expect(page.dataset['theme']).toBe('dim');
  vi.unstubAllGlobals();
});
