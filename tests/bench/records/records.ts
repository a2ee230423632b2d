// A logbook of 20,000 sweeps: the time of every keystroke of a look-up over it in the core, and what the panel makes of it.
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { finderOf, lookUpTyped } from '../../../src/logbook/search/finder.ts';
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { most, shown, type Family } from '../figure.ts';
import { timesOf } from '../lookUp/lookUp.ts';
import { inPanel } from './inPanel.ts';
import { NOW, years } from './years.ts';

/** Letter by letter; two are mistyped. */
const QUERIES = ['velde m1 orrin 85', 'tessel 70 mm 3.5m', 'A10203', 'orin 85 m2', 'tesesl 24'];

export const records: Family = {
  name: 'records',
  needs: ['chromium'],
  async run({ tell }) {
    const library = years();
    const began = performance.now();
    const shelf = shelfOf(library, { at: NOW, temperature: null }, USUAL_LIMITS);
    const listed = performance.now();
    const finder = finderOf(ENGLISH_WRITTEN, library.kit, shelf);
    const prepared = performance.now();
    const letters = QUERIES.flatMap((query) => [...query].map((_letter, index) => query.slice(0, index + 1)));
    const typed = timesOf(letters, (text) => lookUpTyped(finder, text));
    return [
      shown('records', library.records.length),
      shown('situations', finder.shelf.length),
      shown('list with what is due, ms', listed - began),
      shown('preparing look-up, ms', prepared - listed),
      shown('median keystroke, ms', typed[typed.length >> 1] ?? Infinity),
      most('95th percentile of keystrokes, ms', typed[Math.floor(typed.length * 0.95)] ?? Infinity, 2),
      ...(await inPanel(library, tell)),
    ];
  },
};
