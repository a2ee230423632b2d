// Look-up over a logbook of 5,000 situations, as a year's work of a repair shop might fill it: the time of every
// keystroke of queries as people type them, with and without slips, and the time to prepare the logbook for it.
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import type { Entry } from '../../src/logbook/entry.ts';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import { EMPTY_LIBRARY, type Library } from '../../src/logbook/library.ts';
import { finderOf, lookUpSpoken, lookUpTyped } from '../../src/logbook/search/finder.ts';
import { shelfOf } from '../../src/logbook/shelf.ts';
import { newBody, newLens, subjectOf, type Kit, type Situation } from '../../src/kit/kit.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { millimetres, moment, steps } from '../../src/units.ts';
import { most, shown, type Family } from './figure.ts';

const SITUATIONS = 5000;
const NOW = moment(1_767_261_600_000);
const FOCAL = [24, 28, 35, 50, 70, 85, 105, 135, 200, 300];

/** Letter by letter; the last three are mistyped, and one fits nothing. */
const QUERIES = [
  'velde m1 orrin 85',
  '85',
  'tessel 70 mm 3.5m',
  'A10203',
  'old 135',
  'orin 85 m2',
  'tesesl 24',
  'veled orirn 200',
  'quagmire',
];
const SPOKEN = [
  'look up eighty five',
  'look up the orrin one thirty five on velde M one',
  "what's the tessel at seventy millimetres",
];
const ROUNDS = 5;

export const lookUp: Family = {
  name: 'look-up',
  run: () => {
    const library = madeUp();
    const began = performance.now();
    const shelf = shelfOf(library, { at: NOW, temperature: null }, USUAL_LIMITS);
    const listed = performance.now();
    const finder = finderOf(library.kit, shelf);
    const prepared = performance.now();
    const letters = QUERIES.flatMap((query) => [...query].map((_letter, index) => query.slice(0, index + 1)));
    const typed = timesOf(letters, (text) => lookUpTyped(finder, text));
    const spoken = timesOf(SPOKEN, (phrase) => lookUpSpoken(finder, phrase));
    return Promise.resolve([
      shown('situations', finder.shelf.length),
      shown('different words', finder.index.words.length),
      shown('list with what is due, ms', listed - began),
      shown('preparing look-up, ms', prepared - listed),
      shown('median keystroke, ms', typed[Math.floor(typed.length / 2)] ?? 0),
      most('95th percentile of keystrokes, ms', typed[Math.floor(typed.length * 0.95)] ?? Infinity, 5),
      shown('slowest keystroke, ms', typed.at(-1) ?? 0),
      most('slowest spoken question, ms', spoken.at(-1) ?? Infinity, 50),
    ]);
  },
};

/** The least of a few rounds for each text, in ascending order: what the work takes when nothing else runs. */
function timesOf(texts: readonly string[], work: (text: string) => unknown): number[] {
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

function madeUp(): Library {
  const random = seededRandom(4);
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)] as Item;
  const serial = () => `${pick(['A', 'KX-', '00', 'T'])}${Math.floor(10_000 + random() * 900_000)}`;
  const bodies = Array.from({ length: 250 }, (_, n) => ({
    ...newBody(`b${n}`, `${pick(['Velde M1', 'Velde M2', 'Marn D'])} ${pick(['old', 'new', ''])}`, NOW),
    serial: serial(),
  }));
  const lenses = Array.from({ length: 1500 }, (_, n) => ({
    ...newLens(`l${n}`, `${pick(['Orrin', 'Tessel', 'Havel'])} ${pick(FOCAL)} f/${pick([1.4, 1.8, 2, 2.8, 4])}`, NOW),
    serial: serial(),
  }));
  const situations = Array.from({ length: SITUATIONS }, (_, n): Situation => {
    const focalLength = pick(FOCAL);
    const distance = millimetres(focalLength * pick([25, 50, 80]));
    return {
      id: `s${n}`,
      changed: NOW,
      retired: null,
      body: pick(bodies).id,
      lens: pick(lenses).id,
      converter: null,
      focalLength: millimetres(focalLength),
      distance,
    };
  });
  const kit: Kit = { bodies, lenses, converters: [], situations };
  const entries = situations.map((situation, n): Entry => ({
    id: `e${n}`,
    at: moment(NOW - random() * 3e10),
    subject: subjectOf(kit, situation),
    value: steps(Math.floor(random() * 41) - 20),
    record: null,
    conditions: unknownConditions(NOW),
  }));
  return { ...EMPTY_LIBRARY, kit, entries };
}
