// Made-up talk for the snapshots of the matchers: what a language knows, thrown together by a seed, some of it misspelt.
import type { HeardLanguage } from '../../src/hearing/languages/heardLanguage.ts';
import { seededRandom, type Random } from '../../src/practice/random.ts';
import { INVENTED } from '../hearing/languages/invented.ts';

/** The made-up language with something of everything. */
export const WHOLE: HeardLanguage = {
  ...INVENTED,
  around: { courtesies: ['eh', 'te vu', 'te vu mo'], articles: ['lá'], frames: ['sa', 'ol'], places: ['nup'], everyday: ['right', 'back'] },
  question: { ...INVENTED.question, openings: ['wusha', 'wusha fo'], everyday: ['dral', 'dral fo'], closings: ['pado', 'li pado'] },
};

/** So much of the phrases has one letter that is another, or lacks it. */
const MISSPELT = 0.35;
const LETTERS = [...'abdefgiklmnoprstuz'];

const one = <T>(random: Random, items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;

/** Everything that the language knows, in its kinds, so that each kind comes as often as the others. */
function kindsOf({ words, signs, setting, around, numbers, question }: HeardLanguage): readonly (readonly string[])[] {
  const heard = Object.values(words);
  return [
    heard.map(({ say }) => say),
    heard.map(({ say }) => say),
    heard.flatMap(({ also, misheard }) => [...also, ...misheard]),
    [...signs.plus, ...signs.minus],
    setting,
    around.courtesies,
    [...around.articles, ...around.frames, ...around.places],
    Array.from({ length: 30 }, (_, whole) => numbers.say(whole)),
    Array.from({ length: 24 }, (_, whole) => String(whole)),
    [...question.openings, ...question.everyday, ...(question.closings ?? [])],
  ].filter((kind) => kind.length > 0);
}

function misspelt(random: Random, phrase: string): string {
  const at = Math.floor(random() * phrase.length);
  return phrase.slice(0, at) + (random() < 0.5 ? one(random, LETTERS) : '') + phrase.slice(at + 1);
}

/** So many texts as a recogniser may write them, of so many phrases at most. */
export function talkIn(language: HeardLanguage, count: number, seed: number, longest = 4): string[] {
  const random = seededRandom(seed);
  const kinds = kindsOf(language);
  return Array.from({ length: count }, () =>
    Array.from({ length: 1 + Math.floor(random() * longest) }, () => {
      const phrase = one(random, one(random, kinds));
      return random() < MISSPELT ? misspelt(random, phrase) : phrase;
    }).join(' '),
  );
}

/** Values as they may be told, most of them with something wrong in one of their parts. */
export function valuesIn(language: HeardLanguage, count: number, seed: number): string[] {
  const random = seededRandom(seed);
  const { signs, setting, numbers, around } = language;
  const maybe = (share: number, items: readonly string[]): string[] => (random() < share && items.length > 0 ? [one(random, items)] : []);
  return Array.from({ length: count }, () =>
    [
      ...maybe(0.2, around.courtesies),
      ...maybe(0.7, setting),
      ...maybe(0.9, [...signs.plus, ...signs.minus]),
      numbers.say(Math.floor(random() * (random() < 0.8 ? 22 : 100))),
      ...maybe(0.1, around.courtesies),
    ]
      .map((part) => (random() < 0.3 ? misspelt(random, part) : part))
      .join(' '),
  );
}
