// Japanese: whole numbers as they are said, in hiragana, each one word.

const ONES = ['ぜろ', 'いち', 'に', 'さん', 'よん', 'ご', 'ろく', 'なな', 'はち', 'きゅう'] as const;

/** What a digit before it makes of a hundred and of a thousand. */
const HUNDREDS = ['', 'ひゃく', 'にひゃく', 'さんびゃく', 'よんひゃく', 'ごひゃく', 'ろっぴゃく', 'ななひゃく', 'はっぴゃく', 'きゅうひゃく'] as const;

/** A whole number from 0 to 1999. */
export function sayWhole(whole: number): string {
  if (whole === 0) return ONES[0];
  const [thousands, hundreds, tens, ones] = [Math.floor(whole / 1000), Math.floor(whole / 100) % 10, Math.floor(whole / 10) % 10, whole % 10];
  return [thousands > 0 ? 'せん' : '', HUNDREDS[hundreds], tens > 0 ? `${tens > 1 ? ONES[tens] : ''}じゅう` : '', ones > 0 ? ONES[ones] : ''].join('');
}
