// Contract of names: what one file of the program exports, no other exports under the same name.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exportedNames, sharedNames } from './names.ts';

/** Names that several files may export, and why. Strike what is no longer shared. */
const SHARED: Readonly<Record<string, string>> = {
  words: 'the sentences of an area: each module of a language gives its own under this name, and the catalogue hands them out',
  Begin: 'one component: where it is written, and where it is read on demand',
};

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((path) => `src/${path.replaceAll('\\', '/')}`)
  .filter((path) => /\.tsx?$/.test(path));
/** Every language has the same files, which export the same. */
const isAnotherLanguage = (path: string): boolean => /\/(?:words|hearing\/languages)\/(?!en\/)\w\w\//.test(path);

const shared = sharedNames(Object.fromEntries(sources.filter((path) => !isAnotherLanguage(path)).map((path) => [path, readFileSync(path, 'utf8')])));
const nameOf = (line: string): string => line.split(':')[0] ?? '';

describe('the names of the program', () => {
  test('have one home each', () => {
    expect(shared.filter((line) => !(nameOf(line) in SHARED))).toEqual([]);
  });

  test('are allowed to be shared only while they are', () => {
    expect(Object.keys(SHARED).filter((name) => !shared.some((line) => nameOf(line) === name))).toEqual([]);
  });

  test('are all looked at', () => {
    expect(sources.length).toBeGreaterThan(400);
    expect(sources.flatMap((path) => exportedNames(path, readFileSync(path, 'utf8'))).length).toBeGreaterThan(1000);
  });
});

describe('a name', () => {
  test('that two files export is named with both, whatever it names', () => {
    expect(
      sharedNames({
        'a.ts': 'export interface Told {}\nexport const [first, { second }] = read();\nexport type Way = 1;\nexport class Ear {}',
        'b.tsx': 'export function Told() { return <p /> }\nexport const second = 1, Ear = 2;\nconst Way = 3;',
      }),
    ).toEqual(['Ear: a.ts, b.tsx', 'Told: a.ts, b.tsx', 'second: a.ts, b.tsx']);
  });

  test('that a file only hands on, keeps to itself, or gives to a type and its schema is not shared', () => {
    expect(
      sharedNames({
        'a.ts': 'export const Take = 1;\nexport type Take = typeof Take;',
        'b.ts': "export { Take } from './a.ts';\nexport type { Take as Taken } from './a.ts';\nfunction Own() {}",
        'c.ts': 'const Own = 1;',
      }),
    ).toEqual([]);
  });
});
