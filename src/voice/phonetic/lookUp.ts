// A question to the logbook: "look up eighty five" is a query for what follows. Where a number or a known name follows, an opening need only
// sound like one, and may be one of those with which other questions begin.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Pronounce } from './pronouncer.ts';
import { soundDistance } from './soundDistance.ts';
import { bareWordsIn } from './spokenText.ts';
import type { Courtesy } from './courtesy.ts';

/** How far the opening may be, and how far before nothing but numbers. */
const REACH = 0.25;
const REACH_BEFORE_NUMBERS = 0.36;

interface Opening {
  readonly words: string;
  readonly phones: string;
  readonly length: number;
  /** Nothing else begins so. */
  readonly isSure: boolean;
}

/** What is looked for, in words; '' when only the opening was heard; null when nobody asks. `named`: words of names that may be asked for. */
export function lookUpIn(
  language: HeardLanguage,
  pronounce: Pronounce,
  around: Courtesy,
): (heard: readonly string[], named: readonly string[]) => string | null {
  const { question, numbers } = language;
  const bareWords = bareWordsIn(language);
  const opening = (phrase: string, isSure: boolean): Opening => {
    const words = bareWords(phrase);
    return { words: words.join(' '), phones: words.map(pronounce).join(''), length: words.length, isSure };
  };
  const openings = [...question.openings.map((phrase) => opening(phrase, true)), ...question.everyday.map((phrase) => opening(phrase, false))].sort(
    (a, b) => b.length - a.length,
  );
  const closings = (question.closings ?? []).map(bareWords).sort((a, b) => b.length - a.length);
  const longest = openings[0]?.length ?? 0;
  const numberWords = new Set([...Array.from({ length: 2000 }, (_, whole) => numbers.say(whole)), ...numbers.zeros].flatMap(bareWords));
  const isNumber = (word: string): boolean => numberWords.has(word);

  /** What follows, without the thinking before it. */
  const queryAfter = (words: readonly string[], length: number): readonly string[] => around.trimmed(words.slice(length));

  function asked(words: readonly string[], named: readonly string[]): string | null {
    // "Un", "et" and "y" are said around everything, not only in numbers and names.
    const isSought = (word: string): boolean => (isNumber(word) || named.includes(word)) && !question.fillers.includes(word);
    for (const { words: text, length, isSure } of openings) {
      if (words.slice(0, length).join(' ') !== text) continue;
      const query = queryAfter(words, length);
      if (isSure || query.some(isSought)) return query.join(' ');
    }
    for (let length = Math.min(longest, words.length - 1); length >= 1; length--) {
      const query = queryAfter(words, length);
      if (!query.some(isSought)) continue;
      const phones = words.slice(0, length).map(pronounce).join('');
      const reach = query.every(isNumber) ? REACH_BEFORE_NUMBERS : REACH;
      if (openings.some((one) => one.isSure && soundDistance(one.phones, phones) < reach)) return query.join(' ');
    }
    return null;
  }

  /** The verb stands last: the query is what it stands behind. */
  function askedBefore(words: readonly string[], named: readonly string[]): string | null {
    const closing = closings.find((one) => words.length > one.length && words.slice(-one.length).join(' ') === one.join(' '));
    if (!closing) return null;
    const query = around.trimmed(words.slice(0, -closing.length));
    return query.some((word) => isNumber(word) || named.includes(word)) ? query.join(' ') : null;
  }

  return (heard, named) => asked(heard, named) ?? asked(around.trimmed(heard), named) ?? askedBefore(heard, named) ?? askedBefore(around.trimmed(heard), named);
}
