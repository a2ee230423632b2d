// English: numbers as they are heard, of a correction, a lens or a serial number.
import type { SaidNumbers } from '../heardLanguage.ts';
import { sayWhole } from './say.ts';

/** "Hundred", "a hundred", and "and" after any hundreds. */
function also(whole: number): readonly string[] {
  if (whole < 100) return [];
  const heads = [sayWhole(whole - (whole % 100)), ...(whole < 200 ? ['hundred', 'a hundred'] : [])];
  const rest = sayWhole(whole % 100);
  return whole % 100 === 0 ? heads : heads.flatMap((head) => [`${head} ${rest}`, `${head} and ${rest}`]);
}

export const NUMBERS: SaidNumbers = {
  say: sayWhole,
  also,
  zeros: ['oh'],
  point: 'point',
  // "A" is an article.
  letter: /^[b-z]$/,
  ordinals: ['st', 'nd', 'rd', 'th'],
};
