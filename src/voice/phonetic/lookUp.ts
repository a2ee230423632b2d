// A question to the logbook: "look up eighty five" is a query for what follows.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Pronounce } from './pronouncer.ts';
import { soundDistance } from './soundDistance.ts';
import { bareWords } from './spokenText.ts';

const REACH = 0.25;
const AT_MOST = 2;

/** What is looked for, in words; '' when only the opening was heard; null when nobody asks. */
export function lookUpIn({ question }: HeardLanguage, pronounce: Pronounce): (heard: readonly string[]) => string | null {
  const openings = question.openings.map((phrase) => {
    const words = bareWords(phrase);
    return { words: words.join(' '), phones: words.map(pronounce).join('') };
  });
  return (heard) => {
    for (let length = AT_MOST; length >= 1; length--) {
      const opening = heard.slice(0, length);
      const phones = opening.map(pronounce).join('');
      const known = openings.some((one) => one.words === opening.join(' ') || soundDistance(one.phones, phones) < REACH);
      if (known) return heard.slice(length).join(' ');
    }
    return null;
  };
}
