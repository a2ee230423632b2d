// Contract of what the stores are given: every permission has its reason and none is named that is not asked for, each language has its
// listing, its short text is the description that the browsers show, and every picture has its sentence.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { chromiumManifest } from '../../manifest/chromium.ts';
import { firefoxManifest } from '../../manifest/firefox.ts';
import packageJson from '../../package.json' with { type: 'json' };
import { LANGUAGES } from '../../src/language.ts';
import { captionsIn } from '../../store/pictures/captions.ts';
import { STATES } from '../../store/pictures/states.ts';

const read = (path: string): string => readFileSync(path, 'utf8');

test('every permission has its reason, and in which browser it is asked for', () => {
  const inChromium: readonly string[] = chromiumManifest.permissions ?? [];
  const inFirefox: readonly string[] = firefoxManifest.permissions ?? [];
  const asked = [...new Set([...inChromium, ...inFirefox])].map((name) => [
    name,
    !inFirefox.includes(name) ? 'Chromium' : !inChromium.includes(name) ? 'Firefox' : 'both',
  ]);
  const named = [...read('store/permissions.md').matchAll(/^\| `(\w+)` \| (\w+) \| (.{40,}) \|$/gm)].map(([, name, where]) => [name, where]);
  expect(named.toSorted()).toEqual(asked.toSorted());
});

test('the declaration of data is that of the manifest', () => {
  const declared = firefoxManifest.browser_specific_settings?.gecko?.data_collection_permissions;
  expect(declared).toEqual({ required: ['none'] });
  expect(read('store/data.md')).toContain('{ required: ["none"] }');
});

test('every page that may be opened in a tab is named', () => {
  const pages = readdirSync('src/pages').filter((name) => name.endsWith('.html'));
  const named = read('store/permissions.md').matchAll(/`(\w+\.html)`/g);
  expect([...named].map(([, name]) => name).toSorted()).toEqual([...pages, 'panel.html'].toSorted());
});

test('what the reviewers are told to press stands on the screen, and the commands are there', () => {
  const notes = read('store/reviewers.md').replaceAll('\n', ' ');
  const english = readdirSync('src/words/en').map((name) => read(`src/words/en/${name}`));
  const labels = [...notes.matchAll(/(?<!\[)"([^"]+)"(?!\])/g)].map(([, label = '']) => label);
  expect(labels.length).toBeGreaterThanOrEqual(5);
  expect(labels.filter((label) => !english.some((source) => source.includes(`'${label}'`)))).toEqual([]);
  const commands = [...notes.matchAll(/npm run ([\w-]+)/g)].map(([, command = '']) => command);
  expect(commands.filter((command) => !(command in packageJson.scripts))).toEqual([]);
  expect(commands).toContain('pack');
});

test('there is one listing for each language', () => {
  expect(readdirSync('store/listing').toSorted()).toEqual(LANGUAGES.map((language) => `${language}.md`).toSorted());
});

test.each(LANGUAGES)('the listing in %s has the short text that the browsers show, and a long one that says what may leave the computer', (language) => {
  const [, short = '', long = ''] = /## Short\n\n(.+)\n\n## Long\n\n([\s\S]+?)\n\n## Pictures\n/.exec(read(`store/listing/${language}.md`)) ?? [];
  const { description } = JSON.parse(read(`manifest/_locales/${language}/messages.json`)) as { description: { message: string } };
  expect(short).toBe(description.message);
  expect(short.length).toBeLessThanOrEqual(132);
  expect(long.length).toBeGreaterThan(400);
  expect(long).toMatch(/server|servidor|serveur|サーバー/i);
});

test.each(LANGUAGES)('in %s each picture has one short sentence, and each sentence its picture', (language) => {
  const captions = captionsIn(language);
  expect([...captions.keys()]).toEqual(STATES.map(({ name }) => name));
  for (const sentence of captions.values()) expect(sentence).toMatch(/^\S.{8,98}[.。]$/);
  expect(new Set(captions.values()).size).toBe(STATES.length);
});

test('there are no more pictures than a store takes', () => {
  // From memory: five in the store of Chromium.
  expect(STATES.length).toBeLessThanOrEqual(5);
});
