// "Next lens Corvid eighty-five": the name that is said with the word, to be written in figures by whoever knows them.
const OPENING = /^\s*next(?:\s+lens)?\s+(?=\S)/i;

/** What follows "next" or "next lens"; null where nothing does, or where it is something else. */
export function nameAfterNext(text: string): string | null {
  const rest = text.replace(OPENING, '');
  const name = rest.trim();
  return rest === text || name === '' || /^(lens|one|step)$/i.test(name) ? null : name;
}

/** A name as it is written: each word that begins with a letter begins with a capital. */
export const asName = (words: string): string => words.replace(/(^|\s)(\p{L})/gu, (_, blank: string, letter: string) => blank + letter.toUpperCase());
