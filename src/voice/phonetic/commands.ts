// How near what was heard comes to each word that counts now.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Phones } from '../../hearing/languages/sounds.ts';
import { WORDS, type Word } from '../../sweep/inputs.ts';
import type { Pronounce } from './pronouncer.ts';
import { leastDistance, soundDistance, weight } from './soundDistance.ts';
import { bareWords } from './spokenText.ts';

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
  /** What a phrase that is only also accepted costs over the taught one. */
  readonly extra: number;
}

/** Words that say nothing, left out at a small cost: "it's balanced", "please skip". */
const STRIPPED = 0.03;
const ALSO = 0.03;
/** Further than this nothing is told. */
const FAR = 0.5;
/** One other word beside the command: enough to ask, not to act. */
const STRAY = 0.25;
/** A spelling that is known to come back for the word. */
const KNOWN_SPELLING = 0.1;

export type Nearest = (heard: readonly string[], allowed: readonly Word[]) => Nearness[];

/** Compares with every phrase of every word allowed; nearest first, one entry a word. */
export function commandsIn({ words: taught, fillers }: HeardLanguage, pronounce: Pronounce): Nearest {
  const soundsOf = (words: readonly string[]): Phones => words.map(pronounce).join('');
  const empty = fillers.flatMap(bareWords);
  const phrases: Phrase[] = [];
  for (const word of WORDS) {
    if (word === 'set') continue;
    const { say, also, misheard } = taught[word];
    const add = (phrase: string, extra: number) => {
      const words = bareWords(phrase);
      const phones = soundsOf(words);
      phrases.push({ word, text: words.join(' '), phones, weight: weight(phones), extra });
    };
    add(say, 0);
    for (const phrase of also) add(phrase, ALSO);
    for (const phrase of misheard) add(phrase, KNOWN_SPELLING);
  }
  return (heard, allowed) => {
    const best = new Map<Nearness['word'], number>();
    for (const { words, cost } of formsOf(heard, empty)) {
      const text = words.join(' ');
      const phones = soundsOf(words);
      const heavy = weight(phones);
      for (const phrase of phrases) {
        if (!allowed.includes(phrase.word) || leastDistance(heavy, phrase.weight) > FAR) continue;
        const apart = cost + phrase.extra + (text === phrase.text ? -Math.min(ALSO, phrase.extra) : soundDistance(phones, phrase.phones));
        if (apart < (best.get(phrase.word) ?? Infinity)) best.set(phrase.word, apart);
      }
    }
    return [...best].map(([word, apart]) => ({ word, apart })).sort((a, b) => a.apart - b.apart);
  };
}

/** As heard; without words that say nothing; said twice taken as once; with one stray word. */
function formsOf(heard: readonly string[], fillers: readonly string[]): { words: readonly string[]; cost: number }[] {
  const forms = [{ words: heard, cost: 0 }];
  const bare = heard.filter((word) => !fillers.includes(word));
  if (bare.length > 0 && bare.length < heard.length) forms.push({ words: bare, cost: STRIPPED });
  const half = heard.length / 2;
  if (half >= 1 && heard.slice(0, half).join(' ') === heard.slice(half).join(' ')) {
    forms.push({ words: heard.slice(0, half), cost: 0 });
  }
  if (heard.length === 2) for (const word of heard) forms.push({ words: [word], cost: STRAY });
  return forms;
}
