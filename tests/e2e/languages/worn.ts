// The language of a page that is open: the panel follows what is stored, a page in a tab is opened anew.
import type { Page } from 'puppeteer-core';
import { LANGUAGES, type Language } from '../../../src/language.ts';
import { USUAL_SETTINGS } from '../../../src/usualSettings.ts';

/** All but the one that every other test reads. */
export const OTHERS: readonly Language[] = LANGUAGES.filter((language) => language !== 'en');

/** Resolves when the panel says that it is in this language. */
export async function inLanguage(page: Page, language: Language): Promise<void> {
  await page.evaluate(
    async (screens, usual) => {
      const { settings = usual } = await chrome.storage.local.get('settings');
      await chrome.storage.local.set({ settings: { ...(settings as object), language: { screens, voice: 'screens' } } });
    },
    language,
    USUAL_SETTINGS,
  );
  await untilIn(page, language);
}

export async function openedIn(page: Page, language: Language): Promise<void> {
  await page.evaluate((screens) => localStorage.setItem('language', `${screens} ${screens}`), language);
  await page.reload();
  await untilIn(page, language);
}

const untilIn = (page: Page, language: Language): Promise<unknown> => page.waitForFunction((wanted) => document.documentElement.lang === wanted, {}, language);
