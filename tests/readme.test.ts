import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { capOf } from '../src/panel/keys/keys.ts';
import type { Word } from '../src/sweep/inputs.ts';
import { TAUGHT } from '../src/hearing/languages/en/words.ts';

const readme = readFileSync('README.md', 'utf8');
const rows = readme
  .split('\n')
  .filter((line) => line.startsWith('| '))
  .map((line) => line.split('|').map((cell) => cell.trim()));

test.each(Object.keys(TAUGHT) as Word[])('the README teaches the word "%s" with its key', (word) => {
  const row = rows.find(([, said = '']) => said.split(', ').some((part) => part === TAUGHT[word] || part.startsWith(`${TAUGHT[word]} plus`)));
  expect(row?.[2]).toContain(capOf(word));
});

test('the README says in three sentences where sound goes, and is honest about the one way it may leave the computer', () => {
  const section = readme.split('## Where sound goes\n\n')[1]?.split('\n\n')[0] ?? '';
  expect(section.match(/[.:]?[^.]+\.(?=\s|$)/g)).toHaveLength(3);
  expect(section).toContain('may its maker have the sound sent to a server of theirs');
});

test('the README names three commands that do everything on a fresh machine', () => {
  expect(readme.match(/^ {4}npm ci && npm .*$/gm)).toEqual(['    npm ci && npm run try', '    npm ci && npm test', '    npm ci && npm run pack']);
});
