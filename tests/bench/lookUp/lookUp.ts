// Look-up over a logbook of 5,000 situations: the time of every keystroke of queries as people type them, with and without
// slips, in the core and until the list is painted in a real browser, and the time to prepare the logbook for it.
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { finderOf, lookUpSpoken, lookUpTyped } from '../../../src/logbook/search/finder.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { most, shown, type Family } from '../figure.ts';
import { painted } from './painted.ts';
import { NOW, shop } from './shop.ts';

/** Letter by letter; the last three are mistyped, and one fits nothing. */
const QUERIES = ['velde m1 orrin 85', '85', 'tessel 70 mm 3.5m', 'A10203', 'old 135', 'orin 85 m2', 'tesesl 24', 'veled orirn 200', 'quagmire'];
const SPOKEN = ['look up eighty five', 'look up the orrin one thirty five on velde M one', "what's the tessel at seventy millimetres"];
const ROUNDS = 5;

export const lookUp: Family = {
  name: 'look-up',
  needs: ['chromium'],
  async run() {
    const library = shop();
    const began = performance.now();
    const shelf = shelfOf(library, { at: NOW, temperature: null }, USUAL_LIMITS);
    const listed = performance.now();
    const finder = finderOf(ENGLISH_WRITTEN, library.kit, shelf);
    const prepared = performance.now();
    const letters = QUERIES.flatMap((query) => [...query].map((_letter, index) => query.slice(0, index + 1)));
    const typed = timesOf(letters, (text) => lookUpTyped(finder, text));
    const spoken = timesOf(SPOKEN, (phrase) => lookUpSpoken(finder, phrase));
    return [
      shown('situations', finder.shelf.length),
      shown('different words', finder.index.words.length),
      shown('list with what is due, ms', listed - began),
      shown('preparing look-up, ms', prepared - listed),
      shown('median keystroke, ms', typed[Math.floor(typed.length / 2)] ?? 0),
      most('95th percentile of keystrokes, ms', typed[Math.floor(typed.length * 0.95)] ?? Infinity, 5),
      shown('slowest keystroke, ms', typed.at(-1) ?? 0),
      most('slowest spoken question, ms', spoken.at(-1) ?? Infinity, 50),
      ...(await painted(library, QUERIES)),
    ];
  },
};

/** The least of a few rounds for each text, in ascending order: what the work takes when nothing else runs. */
export function timesOf(texts: readonly string[], work: (text: string) => unknown): number[] {
  const least = texts.map(() => Infinity);
  for (let round = 0; round < ROUNDS; round++) {
    texts.forEach((text, index) => {
      const began = performance.now();
      work(text);
      least[index] = Math.min(least[index] ?? Infinity, performance.now() - began);
    });
  }
  return least.sort((a, b) => a - b);
}
