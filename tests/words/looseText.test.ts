// Contract of the catalogue: every sentence that a person sees or hears stands in src/words, and nowhere else.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import ts from 'typescript';
import { looseIn, programOf } from './looseText.ts';

/** File formats: a results table written in one language is read in every other, and the markup of a drawing is for no eye. */
const FORMAT = /^src\/(logbook\/csv\/columns|optics\/print\/svg)\./;
/** What a lens behind a converter is called is stored with every sweep, and computers find by it that a situation is the same. */
const STORED = /^src\/kit\/kit\./;
/** What is heard is data of a language, not a sentence that is shown or said: nobody reads it, and it stands beside no other. */
const HEARD = /^src\/hearing\/languages\//;
/** What the panel calls itself to the browser, and to itself: a name of a lock or of a file is no word of a person. */
const NAMES = /^(sweepbook [a-z ]+|sweepbook-[a-z]+-….[a-z]+)$/;

const ours = (file: ts.SourceFile): boolean => /\/src\/(?!words\/)/.test(file.fileName) && !file.isDeclarationFile && !file.fileName.includes('/node_modules/');

test('no sentence stands outside the catalogue', { timeout: 60_000 }, () => {
  const program = programOf('tsconfig/browser.json');
  const loose = looseIn(program, program.getSourceFiles().filter(ours), process.cwd());
  expect(loose.filter(({ at, text }) => !NAMES.test(text) && ![FORMAT, STORED, HEARD].some((place) => place.test(at.replace(/:\d+$/, ''))))).toEqual([]);
});

test('no page holds a word before its script writes its title and the rest, but what the build draws', () => {
  const pages = ['src/panel', 'src/pages'].flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.html'))
      .map((name) => join(folder, name)),
  );
  expect(pages.length).toBeGreaterThan(5);
  const withWords = pages.filter((page) => /\p{L}/u.test(wordsOf(readFileSync(page, 'utf8'))));
  expect(withWords).toEqual([]);
  expect(wordsOf('<!doctype html><title>Card</title><p><!-- drawn --></p>')).toBe('Card');
});

const wordsOf = (html: string): string => html.replaceAll(/<!--.*?-->|<[^>]*>/gs, '').trim();

test('text in markup, a label and a sentence in a string are found, and ids are not', () => {
  const file = ts.createSourceFile(
    'seeded.tsx',
    `type Id = 'past the limit' | 'nothing held';
     const id: Id = 'past the limit';
     const said: string = 'Hold it again.';
     export const seen = <p class="a small note" title="Read this">Two words {said}: {id} {id === 'nothing held' ? \`at \${id} now\` : ''}</p>;`,
    ts.ScriptTarget.ES2023,
    true,
  );
  const host = { ...ts.createCompilerHost({}), getSourceFile: (name: string) => (name === 'seeded.tsx' ? file : undefined) };
  const program = ts.createProgram(['seeded.tsx'], { jsx: ts.JsxEmit.Preserve, noLib: true }, host);
  expect(looseIn(program, [file], process.cwd()).map(({ text }) => text)).toEqual(['Hold it again.', 'Read this', 'Two words', ':', 'at … now']);
});
