// Holds the English list of pronunciations against the dictionary that it was taken from, word by word.
//   node manifest/run.mjs tests/bench/hearing/dictionary.ts FOLDER
// FOLDER holds the npm package cmu-pronouncing-dictionary 3.0.0, unpacked in `cmu`. What it found stands in docs/pronunciations.md.
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { PRONOUNCED } from '../../../src/hearing/languages/en/pronounced.ts';
import { SYMBOLS, VOWEL_LETTERS } from '../../../src/hearing/languages/sounds.ts';
import { listedWords } from '../../../src/hearing/languages/wordList.ts';

const folder = resolve(process.argv[2] ?? '.');
const { dictionary } = (await import(pathToFileURL(join(folder, 'cmu/package/index.js')).href)) as { dictionary: Record<string, string> };

/** One letter a sound; a vowel with stress of either kind is a capital. */
function rewritten(sounds: string): string {
  const letters = sounds.split(' ').map((sound) => {
    const letter = SYMBOLS[sound.replace(/\d/, '')] ?? '?';
    return /[12]$/.test(sound) && VOWEL_LETTERS.includes(letter) ? letter.toUpperCase() : letter;
  });
  return letters.join('');
}

const soundsOf = (word: string): string[] => [word, `${word}(2)`, `${word}(3)`].flatMap((name) => dictionary[name] ?? []).map(rewritten);

const words = listedWords(PRONOUNCED);
const others = words.filter(([word, sounds]) => !soundsOf(word).includes(sounds));
for (const [word, sounds] of others) console.log(`${word}: ${sounds} here, ${soundsOf(word).join(' or ') || 'nothing'} there`);
console.log(`${words.length - others.length} of ${words.length} words are sounded as in the dictionary`);
