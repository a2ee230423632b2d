// A question to the logbook: "look up eighty five" is a query for what follows.
import type { Language } from './language.ts';
import { soundDistance } from './soundDistance.ts';
import { spokenWords } from './spokenText.ts';

const REACH = 0.25;
const AT_MOST = 2;

/** What is looked for, in words; '' when only the opening was heard; null when nobody asks. */
export function lookUpIn({ lookUp, pronounce }: Language): (text: string) => string | null {
  const openings = lookUp.map((words) => ({ words, phones: words.split(' ').map(pronounce).join('') }));
  return (text) => {
    const heard = spokenWords(text);
    for (let length = AT_MOST; length >= 1; length--) {
      const opening = heard.slice(0, length);
      const phones = opening.map(pronounce).join('');
      const known = openings.some(
        (one) => one.words === opening.join(' ') || soundDistance(one.phones, phones) < REACH,
      );
      if (known) return heard.slice(length).join(' ');
    }
    return null;
  };
}
