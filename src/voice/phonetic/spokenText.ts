// A recogniser's text as plain words: its marks, accents and figures undone, whichever way it chose to write them.
import type { Vocabulary } from '../../hearing/languages/heardLanguage.ts';
import { asIs, withoutAccents } from '../asWritten.ts';

const MINUS = '[-\\u2010-\\u2015\\u2212]';

/** Lower-case words without accents; signs and figures in words, "set–12" is "set minus twelve". */
export function spokenWordsIn({ signs, numbers, parted = asIs }: Vocabulary): (text: string) => string[] {
  const ordinal = new RegExp(`(\\d)(?:${numbers.ordinals.join('|') || '(?!)'})\\b`, 'g');
  const minus = new RegExp(`(^|[^\\d])${MINUS}\\s*(?=\\d)`, 'g');
  const inWords = (figures: string): string => (figures.length <= 3 ? numbers.say(Number(figures)) : [...figures].join(' '));
  const [plusWord, minusWord] = [parted(signs.plus[0]), parted(signs.minus[0])];
  return (text) =>
    wordsOf(
      folded(parted(text))
        .replace(ordinal, '$1')
        .replace(/(\d)[.,](?=\d)/g, `$1 ${parted(numbers.point)} `)
        .replace(/\+/g, ` ${plusWord} `)
        .replace(minus, `$1 ${minusWord} `)
        .replace(/(\d)(?=\p{L})/gu, '$1 ')
        .replace(/\d+/g, (figures) => ` ${inWords(figures)} `),
    );
}

/** The words of a language's own phrase, to be compared with those. */
export const bareWordsIn =
  ({ parted = asIs }: Pick<Vocabulary, 'parted'>): ((phrase: string) => string[]) =>
  (phrase) =>
    wordsOf(parted(phrase));

const wordsOf = (phrase: string): string[] =>
  folded(phrase)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

const folded = (text: string): string =>
  withoutAccents(text)
    .toLowerCase()
    .replace(/['\u2018\u2019]/g, '')
    // What other scripts compose of a letter and its mark is whole again.
    .normalize('NFC');
