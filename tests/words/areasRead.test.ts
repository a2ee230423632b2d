// Contract of reading the catalogue: what is read on demand, and each page of its own, has every area that it and what it
// imports can show; a screen that misses one shows nothing.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { importsOf, type Import } from '../walls/imports.ts';

const namesIn = (list = ''): string[] => [...list.matchAll(/'(\w+)'/g)].map(([, name = '']) => name);
const readIn = (path: string): string[] => [...(texts.get(path) ?? '').matchAll(/readWords\(([^)]*)\)/g)].flatMap(([, list]) => namesIn(list));

const texts = new Map(
  readdirSync('src', { recursive: true, encoding: 'utf8' })
    .map((path) => `src/${path.replaceAll('\\', '/')}`)
    .filter((path) => /\.tsx?$/.test(path) && !path.startsWith('src/words/'))
    .map((path) => [path, readFileSync(path, 'utf8')]),
);
const imports = [...texts].flatMap(([path, text]) => importsOf(path, text));
const byFile = new Map<string, Import[]>();
for (const one of imports) byFile.set(one.file, [...(byFile.get(one.file) ?? []), one]);

/** A file with all that it imports at once. */
function withAllOf(path: string): ReadonlySet<string> {
  const all = new Set([path]);
  for (const file of all) for (const { how, of } of byFile.get(file) ?? []) if (how === 'at once' && texts.has(of)) all.add(of);
  return all;
}

const shownBy = (files: ReadonlySet<string>): Set<string> =>
  new Set(
    [...files].flatMap((file) => [...(texts.get(file) ?? '').matchAll(/\b(?:words|sentences|aloud|saidAndShown)\('(\w+)'[,)]/g)].map(([, area = '']) => area)),
  );

/** The areas that stand beside `import('…')` in “late”. */
const lateWith = ({ file, of }: Import): string[] => {
  const relative = posix.relative(posix.dirname(file), of);
  const asked = `import('${relative.startsWith('.') ? relative : `./${relative}`}')`;
  const calls = (texts.get(file) ?? '').split(/\blate\(/).slice(1);
  return calls
    .map((rest) => rest.split(');\n')[0] ?? '')
    .filter((call) => call.includes(asked))
    .flatMap(namesIn);
};

const ofPanel = withAllOf('src/panel/panel.tsx');
/** Read with the desk, before any screen that asks for them is shown. */
const always = readIn('src/panel/session/opening.ts');
const onDemand = imports.filter(({ how, of }) => how === 'on demand' && texts.has(of));

/** What whoever reads a part has read before: its own areas and, where it is itself a part, what that was read with. */
function before(file: string, seen: readonly string[] = []): string[] {
  if (seen.includes(file)) return [];
  if (ofPanel.has(file)) return [...always, ...readIn(file)];
  const parts = onDemand.filter(({ of }) => withAllOf(of).has(file));
  return [...readIn(file), ...parts.flatMap((part) => [...lateWith(part), ...before(part.file, [...seen, file])])];
}

test.each(onDemand.filter(({ file }) => file.startsWith('src/panel/')))('$of, read by $file, has every area that it shows', (part) => {
  const files = withAllOf(part.of);
  const there = new Set([...lateWith(part), ...before(part.file), ...[...files].flatMap(readIn)]);
  expect([...shownBy(files)].filter((area) => !there.has(area)).toSorted()).toEqual([]);
});

test.each([...texts.keys()].filter((path) => /^src\/pages\/\w+\.tsx?$/.test(path) && existsSync(path.replace(/tsx?$/, 'html'))))(
  '%s has every area that it shows',
  (page) => {
    const files = withAllOf(page);
    const there = new Set([...files].flatMap(readIn));
    expect([...shownBy(files)].filter((area) => !there.has(area)).toSorted()).toEqual([]);
  },
);

test('the screens read on demand are all looked at', () => {
  expect(onDemand.filter((part) => lateWith(part).length > 0).length).toBeGreaterThan(25);
});
