// Contract of the first moment in a language: a panel that was never opened is in the browser's, before any script but its first has run; and
// it says so, or lines would break and a screen reader would speak as in English.
import { expect, onTestFinished, test } from 'vitest';
import { words as german } from '../../src/words/de/first.ts';
import { words as japanese } from '../../src/words/ja/first.ts';
import { words as english } from '../../src/words/en/first.ts';
import { launchChromium } from './chromium.ts';
import { seatAt, until } from './seat.ts';

interface AtFirst {
  readonly lang: string;
  readonly text: string;
  readonly placeholder: string;
  /** The scripts that had been asked for. */
  readonly scripts: readonly string[];
}

test.each([
  { liked: 'de-AT,en-GB', language: 'de', words: german },
  { liked: 'ja', language: 'ja', words: japanese },
  { liked: 'nl,pt-BR', language: 'en', words: english },
])('a browser that likes $liked opens the panel in $language', async ({ liked, language, words }) => {
  const chromium = await launchChromium({ args: [`--lang=${language}`, `--accept-lang=${liked}`] });
  onTestFinished(chromium.close);
  const page = await chromium.browser.newPage();
  await page.evaluateOnNewDocument(() => {
    // The page's own script has run by then, and what it imports has not.
    addEventListener('DOMContentLoaded', () =>
      Object.assign(globalThis, {
        atFirst: {
          lang: document.documentElement.lang,
          text: document.querySelector('#panel')?.textContent ?? '',
          placeholder: document.querySelector('input')?.placeholder ?? '',
          scripts: performance.getEntriesByType('resource').flatMap(({ name }) => (name.endsWith('.js') ? [name.split('/').at(-1) ?? ''] : [])),
        } satisfies AtFirst,
      }),
    );
  });
  await page.goto(`chrome-extension://${chromium.extensionId}/panel.html`);
  const { lang, text, placeholder, scripts } = await page.evaluate(() => (globalThis as unknown as { atFirst: AtFirst }).atFirst);
  expect(scripts.filter((name) => name.startsWith('panel'))).toEqual([]);
  expect(lang).toBe(language);
  for (const name of Object.values(words.place)) expect(text).toContain(name);
  expect(placeholder).toBe(words.placeholder);

  const { text: later } = await until(seatAt(page), 'the start', (seen) => seen.screen === 'start' && seen.text.includes('+20'));
  for (const name of Object.values(words.place)) expect(later).toContain(name);
  expect(await page.evaluate(() => document.documentElement.lang)).toBe(language);
});
