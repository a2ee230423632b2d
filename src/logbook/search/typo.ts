// Whether a word was meant although it was mistyped: the least number of slips (a letter wrong, missing, too many, or
// two swapped) that turn what was typed into the beginning of a word. Optimal string alignment, kept to a narrow band
// (Damerau 1964, Comm. ACM 7:171; the band after Ukkonen 1985, Inform. Control 64:100).

/** Slips forgiven in a word of this length: none in short ones, where every slip makes another word. */
export const slipsForgiven = (length: number): number => (length < 4 ? 0 : length < 8 ? 1 : 2);

/** A bit for each letter and digit a word holds; words that differ in many cannot be close. */
export function lettersOf(word: string): number {
  let letters = 0;
  for (let i = 0; i < word.length; i++) letters |= 1 << (word.charCodeAt(i) % 31);
  return letters;
}

/** Could `typed` begin a word with these letters after `most` slips? Each slip brings in at most one strange letter. */
export function couldBegin(typed: number, letters: number, most: number): boolean {
  let strange = typed & ~letters;
  for (let slips = 0; strange !== 0; slips++) {
    if (slips === most) return false;
    strange &= strange - 1;
  }
  return true;
}

/** The slips between `typed` and the best beginning of `word`, or null when there are more than `most`. */
export function slipsToBegin(typed: string, word: string, most: number): number | null {
  const width = Math.min(word.length, typed.length + most);
  if (typed.length - width > most) return null;
  const far = most + 1;
  let before: number[] = [];
  let row = Array.from({ length: width + 1 }, (_, index) => Math.min(index, far));
  for (let i = 1; i <= typed.length; i++) {
    const next = [Math.min(i, far)];
    let least = next[0] ?? far;
    for (let j = 1; j <= width; j++) {
      const cost = typed[i - 1] === word[j - 1] ? 0 : 1;
      let slips = Math.min((row[j] ?? far) + 1, (next[j - 1] ?? far) + 1, (row[j - 1] ?? far) + cost);
      if (i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1]) {
        slips = Math.min(slips, (before[j - 2] ?? far) + 1);
      }
      next.push(slips);
      least = Math.min(least, slips);
    }
    if (least > most) return null;
    before = row;
    row = next;
  }
  const slips = Math.min(...row);
  return slips > most ? null : slips;
}
