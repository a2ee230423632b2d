// "Next lens Corvid eighty-five": the name that is said with the word, to be written in figures by whoever knows them.
import type { Naming } from '../hearing/languages/heardLanguage.ts';

/** What parts the words from the name, or ends them both: a recogniser may write a comma or a full stop there. */
const MARKS = '\\s.,:;!?\u2026\u3001\u3002';
const ENDS = new RegExp(`^[${MARKS}]+|[${MARKS}]+$`, 'g');

/** What follows "next" or "next lens"; null where nothing does, or where it is something else. */
export function nameAfterNextIn({ openings, noNames, between = `[${MARKS}]+` }: Naming): (text: string) => string | null {
  const opening = new RegExp(`^\\s*(?:${openings.join('|').replaceAll(' ', '\\s+')})${between}(?=\\S)`, 'i');
  return (text) => {
    const rest = text.replace(opening, '');
    const name = rest.replace(ENDS, '');
    return rest === text || name === '' || noNames.includes(name.toLowerCase()) ? null : name;
  };
}

/** A name as it is written: each word that begins with a letter begins with a capital. */
export const asName = (words: string): string => words.replace(/(^|\s)(\p{L})/gu, (_, blank: string, letter: string) => blank + letter.toUpperCase());
