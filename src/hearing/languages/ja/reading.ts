// Japanese: what a recogniser wrote, in hiragana, figures and Latin letters. Words that matter are known by their spelling, numbers
// become figures, and any other character is read as it is inside words.
import { inHiragana } from './hiragana.ts';
import { READINGS, UNREAD } from './readings.ts';
import { SPELLINGS } from './spellings.ts';

const linesOf = (list: string): string[][] =>
  list
    .trim()
    .split('\n')
    .map((line) => line.split(' '));

const spelt = new Map(linesOf(SPELLINGS).flatMap(([reading = '', ...spellings]) => spellings.map((spelling) => [spelling.toLowerCase(), reading] as const)));
const read = new Map(linesOf(READINGS).flatMap(([reading = '', characters = '']) => [...characters].map((character) => [character, reading] as const)));
/** A word in Latin letters is one only as a whole. */
const known = new RegExp(
  [...spelt.keys()]
    .sort((a, b) => b.length - a.length)
    .map((spelling) => (/^[a-z]+$/.test(spelling) ? `(?<![a-z])${spelling}(?![a-z])` : /^\d/.test(spelling) ? `(?<!\\d)${spelling}` : spelling))
    .join('|'),
  'g',
);

const DIGITS = '〇一二三四五六七八九';
const UNITS: Readonly<Record<string, number>> = { 十: 10, 百: 100, 千: 1000 };

/** One number after another: "七十二百" are two, and so are "二一". */
const NUMBER = /(?:[^十百千]?千)?(?:[^十百千]?百)?(?:[^十百千]?十)?(?:[^十百千](?![十百千]))?/g;

function sizeOf(number: string): number {
  let [whole, digit] = [0, 0];
  for (const character of number) {
    const unit = UNITS[character];
    if (unit === undefined) digit = Math.max(0, DIGITS.indexOf(character));
    else whole += Math.max(1, digit) * unit;
    if (unit !== undefined) digit = 0;
  }
  return whole + digit;
}

const inFigures = (numbers: string): string => (numbers.match(NUMBER) ?? []).filter(Boolean).map(sizeOf).join(' ');

const PLAIN = /[\u3400-\u9fff\uf900-\ufaff]/gu;

export const inKana = (text: string): string =>
  inHiragana(
    text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/(\p{Script=Han})々/gu, '$1$1')
      // A long mark before a number is a minus.
      .replace(/(^|[^\p{L}\p{N}])ー(?=\d)/gu, '$1-')
      .replace(known, (spelling) => spelt.get(spelling) ?? spelling)
      .replace(/[〇零一二三四五六七八九十百千]+/g, inFigures)
      .replace(PLAIN, (character) => read.get(character) ?? UNREAD)
      .replace(/(\d)\.(?=\d)/g, '$1てん'),
  );
