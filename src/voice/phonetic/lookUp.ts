// A question to the logbook: "look up eighty five" is a query for what follows. Where a number follows, an opening need only
// sound like one, and may be one of those with which other questions begin.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Pronounce } from './pronouncer.ts';
import { soundDistance } from './soundDistance.ts';
import { bareWords } from './spokenText.ts';
import type { Around } from './surroundings.ts';

/** How far the opening may be, and how far before nothing but numbers. */
const REACH = 0.25;
const REACH_BEFORE_NUMBERS = 0.36;

interface Opening {
  readonly words: string;
  readonly phones: string;
  readonly length: number;
}

/** What is looked for, in words; '' when only the opening was heard; null when nobody asks. */
export function lookUpIn({ question, numbers }: HeardLanguage, pronounce: Pronounce, around: Around): (heard: readonly string[]) => string | null {
  const opening = (phrase: string): Opening => {
    const words = bareWords(phrase);
    return { words: words.join(' '), phones: words.map(pronounce).join(''), length: words.length };
  };
  const openings = question.openings.map(opening);
  const everyday = question.everyday.map(opening).sort((a, b) => b.length - a.length);
  const longest = Math.max(...openings.map(({ length }) => length), ...everyday.map(({ length }) => length));
  const numberWords = new Set([...Array.from({ length: 200 }, (_, whole) => numbers.say(whole)), ...numbers.zeros].flatMap(bareWords));
  const isNumber = (word: string): boolean => numberWords.has(word);

  /** What follows, without the thinking before it. */
  const queryAfter = (words: readonly string[], length: number): readonly string[] => around.trimmed(words.slice(length));

  function asked(words: readonly string[]): string | null {
    for (const { words: text, length } of [...openings, ...everyday].sort((a, b) => b.length - a.length)) {
      if (words.slice(0, length).join(' ') !== text) continue;
      const query = queryAfter(words, length);
      const isSure = openings.some((one) => one.words === text);
      if (isSure || query.some(isNumber)) return query.join(' ');
    }
    for (let length = Math.min(longest, words.length - 1); length >= 1; length--) {
      const query = queryAfter(words, length);
      if (!query.some(isNumber)) continue;
      const phones = words.slice(0, length).map(pronounce).join('');
      const reach = query.every(isNumber) ? REACH_BEFORE_NUMBERS : REACH;
      if (openings.some((one) => soundDistance(one.phones, phones) < reach)) return query.join(' ');
    }
    return null;
  }

  return (heard) => asked(heard) ?? asked(around.trimmed(heard));
}
