// The list of a language's words weighs a third less when each line leaves out what it has in common with the one above it. It
// is written whole, and shortened on its way into the build.
import { readFile } from 'node:fs/promises';
import type { Plugin } from 'esbuild';
import { listedWords } from '../src/hearing/languages/wordList.ts';

/** One digit tells it. */
const MOST = 9;

export function shortened(list: string): string {
  let [word, sounds] = ['', ''];
  return listedWords(list)
    .map((line) => {
      const [letters, phones] = [shared(word, line[0]), shared(sounds, line[1])];
      [word, sounds] = line;
      return `${letters}${word.slice(letters)} ${phones}${sounds.slice(phones)}`;
    })
    .join('\n');
}

function shared(before: string, now: string): number {
  let count = 0;
  while (count < Math.min(MOST, before.length, now.length) && before[count] === now[count]) count++;
  return count;
}

export const shortLists: Plugin = {
  name: 'lists of words are shortened',
  setup({ onLoad }) {
    onLoad({ filter: /pronounced\.ts$/ }, async ({ path }) => {
      const source = await readFile(path, 'utf8');
      return { contents: source.replace(/`([^`]*)`/, (_, list: string) => JSON.stringify(shortened(list))), loader: 'ts' };
    });
  },
};
