// Words broken into lines where nothing measures them: by counting letters. Languages without spaces break between any two signs, but not
// within a foreign word, nor before what closes.

/** Signs as wide as they are high: of Japanese, Chinese and Korean, with their punctuation. */
const FULL = '\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe4f\uff00-\uff60\uffe0-\uffe6';
const OPENING = '「『（〈《【';
const CLOSING = '、。，．」』）〉》】・：；？！々ーぁぃぅぇぉっゃゅょ';
/** A blank at which a line may end: before a unit stands one at which it may not. */
const BLANK = ' \\t\\n\u3000';
const WORDS_OF = new RegExp(`([${BLANK}]*)([${OPENING}]*(?:[ァ-ヺー]+|[^${BLANK}${FULL}]+|[${FULL}])[${CLOSING}]*)`, 'gu');
const IS_FULL = new RegExp(`[${FULL}]`, 'u');

/** Common sans-serif letters are on average half as wide as their line is high; a little more to be safe. */
const LETTER = 0.55;

/** How many common letters are as wide as these words. */
export const lettersIn = (words: string): number => [...words].reduce((sum, letter) => sum + (IS_FULL.test(letter) ? 1 / LETTER : 1), 0);

/** So that a line of letters of this size stays within the width. */
export function wrapWords(words: string, size: number, width: number): string[] {
  const most = Math.max(4, Math.floor(width / (size * LETTER)));
  const lines: string[] = [];
  for (const [, space = '', long = ''] of words.matchAll(WORDS_OF)) {
    for (const [index, word] of cutTo(most, long).entries()) {
      const gap = space !== '' && index === 0 ? ' ' : '';
      const longer = `${lines.at(-1) ?? ''}${gap}${word}`;
      if (lines.length > 0 && lettersIn(longer) <= most) lines[lines.length - 1] = longer;
      else lines.push(word);
    }
  }
  return lines;
}

/** A word that no line holds, in pieces. */
function cutTo(most: number, word: string): string[] {
  const pieces = [''];
  for (const letter of word) {
    const longer = `${pieces.at(-1)}${letter}`;
    if (lettersIn(longer) <= most) pieces[pieces.length - 1] = longer;
    else pieces.push(letter);
  }
  return pieces;
}
