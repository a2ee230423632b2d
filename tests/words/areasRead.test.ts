// Contract of reading the catalogue: whatever is read on demand names every area that it and what it imports can show, unless
// that area comes with what is stored. A screen that misses one shows nothing.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

/** Read with the desk, before any screen that asks for them is shown. */
const [, withDesk = ''] = /readWords\(([^)]*)\)/.exec(readFileSync('src/panel/session/create.ts', 'utf8')) ?? [];
const namesIn = (list: string): string[] => [...list.matchAll(/'(\w+)'/g)].map(([, name = '']) => name);
const ALWAYS = new Set(namesIn(withDesk));

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => `src/${path.replaceAll('\\', '/')}`)
  .filter((path) => /\.tsx?$/.test(path) && !path.startsWith('src/words/'));
const texts = new Map(sources.map((path) => [path, readFileSync(path, 'utf8')]));
const importsOf = (path: string): string[] =>
  [...(texts.get(path) ?? '').matchAll(/^(?:import|export)(?! type)[^;]*?from '(\.[^']+)';/gms)].map(([, to = '']) => join(dirname(path), to));

/** The areas that a file and all that it imports at once can show. */
function shownBy(path: string): Set<string> {
  const seen = new Set([path]);
  for (const file of seen) for (const to of importsOf(file)) if (texts.has(to)) seen.add(to);
  return new Set([...seen].flatMap((file) => [...(texts.get(file) ?? '').matchAll(/\bwords\('(\w+)'\)/g)].map(([, area = '']) => area)));
}

const parts = sources.flatMap((path) =>
  [...(texts.get(path) ?? '').matchAll(/late\(\s*async \(\) => \(await import\('([^']+)'\)\)\.\w+((?:,\s*'\w+')*),?\s*\)/g)].map(([, to = '', areas = '']) => ({
    path,
    part: join(dirname(path), to),
    areas: namesIn(areas),
  })),
);

test('all that is read on demand is looked at', () => {
  expect(parts.length).toBeGreaterThan(25);
});

test.each(parts)('$part, read by $path, has every area that it shows', ({ path, part, areas }) => {
  // What reads it on demand has read its own areas already.
  const there = new Set([...areas, ...ALWAYS, ...parts.filter((one) => shows(one.part, path)).flatMap((one) => one.areas)]);
  expect([...shownBy(part)].filter((area) => !there.has(area)).toSorted()).toEqual([]);
});

/** Is the file one of those that the part imports at once? */
function shows(part: string, file: string): boolean {
  const seen = new Set([part]);
  for (const one of seen) for (const to of importsOf(one)) if (texts.has(to)) seen.add(to);
  return seen.has(file);
}
