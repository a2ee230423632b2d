// Contract of what is new: every language tells the same versions, newest first, and a release does not go out without its news.
import { expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { LANGUAGES, type Language } from '../../src/language.ts';
import type { AboutWords } from '../../src/words/aboutWords.ts';

const newsIn = async (language: Language) => ((await import(`../../src/words/${language}/about.ts`)) as { words: AboutWords }).words.news.of;

test.each(LANGUAGES)('%s begins with the version of today, and every version is older than the one before it', async (language) => {
  const versions = (await newsIn(language)).map(({ version }) => version);
  expect(versions[0]).toBe(packageJson.version);
  expect(versions).toEqual(versions.toSorted((one, other) => other.localeCompare(one, 'en', { numeric: true })));
  expect(new Set(versions).size).toBe(versions.length);
});

test.each(LANGUAGES)('%s tells as much of each version as English does', async (language) => {
  const told = async (one: Language) => (await newsIn(one)).map(({ version, lines }) => [version, lines.length]);
  expect(await told(language)).toEqual(await told('en'));
});
