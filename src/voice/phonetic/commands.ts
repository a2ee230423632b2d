// How near what was heard comes to each word that counts now.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Phones } from '../../hearing/languages/sounds.ts';
import { WORDS, type Word } from '../../sweep/inputs.ts';
import type { Pronounce } from './pronouncer.ts';
import { leastDistance, soundDistance, weight } from './soundDistance.ts';
import { bareWordsIn } from './spokenText.ts';
import type { Courtesy, Rest } from './courtesy.ts';

/** A taught word and how far from it the heard words are: 0 the same, about 1 unrelated. */
interface Nearness {
  readonly word: Exclude<Word, 'set'>;
  readonly apart: number;
}

interface Phrase {
  readonly word: Exclude<Word, 'set'>;
  readonly text: string;
  readonly phones: Phones;
  readonly weight: number;
  /** It with an ending of the language: "skipped". */
  readonly inflected: ReadonlySet<string>;
  /** What a phrase that is only also accepted costs over the taught one. */
  readonly extra: number;
}

const ALSO = 0.03;
/** Further than this nothing is told. */
const FAR = 0.5;
/** One other word beside the command: enough to ask, not to act. */
const STRAY = 0.25;
/** Another form of the word that is taught. */
const INFLECTED = 0.12;
/** A spelling that is known to come back for the word. */
const KNOWN_SPELLING = 0.12;

export type Nearest = (heard: readonly string[], allowed: readonly Word[]) => Nearness[];

/** Compares with every phrase of every word allowed; nearest first, one entry a word. */
export function commandsIn(language: HeardLanguage, pronounce: Pronounce, around: Courtesy): Nearest {
  const { words: taught, pronunciation } = language;
  const bareWords = bareWordsIn(language);
  const soundsOf = (words: readonly string[]): Phones => words.map(pronounce).join('');
  const endings = pronunciation.endings.map(([letters]) => letters);
  const phrases: Phrase[] = [];
  for (const word of WORDS) {
    if (word === 'set') continue;
    const { say, also, misheard } = taught[word];
    const add = (phrase: string, extra: number) => {
      const words = bareWords(phrase);
      const [text, phones] = [words.join(' '), soundsOf(words)];
      // The last letter may give way to the ending: "resuming".
      const inflected = new Set([text, text.slice(0, -1)].flatMap((stem) => endings.map((ending) => stem + ending)));
      phrases.push({ word, text, phones, weight: weight(phones), inflected, extra });
    };
    add(say, 0);
    for (const phrase of also) add(phrase, ALSO);
    for (const phrase of misheard) add(phrase, KNOWN_SPELLING);
  }
  return (heard, allowed) => {
    const best = new Map<Nearness['word'], number>();
    for (const { words, cost, everyday } of formsOf(heard, around)) {
      const text = words.join(' ');
      const phones = soundsOf(words);
      const heavy = weight(phones);
      for (const phrase of phrases) {
        if (!allowed.includes(phrase.word)) continue;
        const apart = (around.isEveryday(phrase.word) ? everyday : cost) + apartFrom(phrase, text, phones, heavy);
        if (apart < (best.get(phrase.word) ?? FAR)) best.set(phrase.word, apart);
      }
    }
    return [...best].map(([word, apart]) => ({ word, apart })).sort((a, b) => a.apart - b.apart);
  };
}

function apartFrom(phrase: Phrase, text: string, phones: Phones, heavy: number): number {
  if (text === phrase.text) return phrase.extra - Math.min(ALSO, phrase.extra);
  const sounds = leastDistance(heavy, phrase.weight) > FAR ? Infinity : soundDistance(phones, phrase.phones);
  return phrase.extra + (phrase.inflected.has(text) ? Math.min(INFLECTED, sounds) : sounds);
}

/** What may have been told by these words: as heard, without what stands around it, said twice, or beside one stray word. */
function formsOf(heard: readonly string[], around: Courtesy): Rest[] {
  return around.restsOf(heard).flatMap((rest) => {
    const { words } = rest;
    const forms = [rest];
    const half = words.length / 2;
    if (half >= 1 && words.slice(0, half).join(' ') === words.slice(half).join(' ')) forms.push({ ...rest, words: words.slice(0, half) });
    if (words.length === 2) for (const word of words) forms.push({ words: [word], cost: rest.cost + STRAY, everyday: Infinity });
    return forms;
  });
}
