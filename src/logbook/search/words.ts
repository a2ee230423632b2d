// How names, serials and what a person types are cut into words that can be compared: folded to small letters without
// accents, `f/1.8` and `85mm` readable with and without their sign and unit.

/** Small letters without accents, nor what says where a word may be parted; a comma between digits is a decimal point. */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll('\u00ad', '')
    .replace(/(?![\u3099\u309a])\p{M}/gu, '')
    // The marks of kana make other letters of them.
    .normalize('NFC')
    .toLowerCase()
    .replace(/(\d),(\d)/g, '$1.$2');

/** The words of a text, in order. Letters, digits and decimal points make words; all else parts them. */
export const wordsIn = (text: string): string[] =>
  fold(text)
    .replace(/\bf\s*\/\s*(?=\d)/g, 'f')
    .split(/[^\p{L}\p{N}.]+/u)
    .map((word) => word.replace(/^\.+|\.+$/g, ''))
    .filter((word) => word !== '');

/** Every word under which a text can be found: also the number in `85mm` and in `f1.8`. */
export function findableWords(text: string): string[] {
  const words = wordsIn(text);
  return words.flatMap((word) => {
    const number = /^(?:f?)(\d+(?:\.\d+)?)(?:mm|m|x)?$/.exec(word)?.[1];
    return number === undefined || number === word ? [word] : [word, number];
  });
}
