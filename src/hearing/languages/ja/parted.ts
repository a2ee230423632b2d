// Japanese: a text, which has no blanks between its words, parted into words that are known to be told or to stand around what is told.
// What none of them is stays together in short pieces: the parting with the fewest pieces is taken.
import { ALSO } from './also.ts';
import { AROUND, SETTING, SETTING_BEHIND, SIGNS } from './around.ts';
import { QUESTION } from './asking.ts';
import { MISHEARD } from './misheard.ts';
import { otherWays } from './numbers.ts';
import { inKana } from './reading.ts';
import { sayWhole } from './say.ts';
import { TAUGHT } from './words.ts';

const LARGEST = 1999;
const { courtesies, articles, frames, places } = AROUND;
const phrases: readonly string[] = [
  [TAUGHT, ALSO, MISHEARD].flatMap((of) => Object.values<string | readonly string[]>(of).flat()),
  [SIGNS.plus, SIGNS.minus, SETTING, SETTING_BEHIND, courtesies, articles, frames, places].flat(),
  [QUESTION.openings, QUESTION.everyday, QUESTION.closings, QUESTION.fillers, ['てん', 'レンズ']].flat(),
].flat();
const known = new Set([...phrases.map(inKana), ...Array.from({ length: LARGEST + 1 }, (_, whole) => [sayWhole(whole), ...otherWays(whole)]).flat()]);
const longest = Math.max(...[...known].map((word) => word.length));

/** A known word, and a piece that is none with each of its kana. */
const WORD = 0.9;
const PIECE = 0.1;
const KANA = 1;
const LONGEST_PIECE = 3;

function words(run: string): string {
  const best: { cost: number; from: number }[] = [{ cost: 0, from: 0 }];
  for (let end = 1; end <= run.length; end++) {
    let here = { cost: Infinity, from: 0 };
    for (let from = Math.max(0, end - longest); from < end; from++) {
      const length = end - from;
      const own = known.has(run.slice(from, end)) ? WORD : length <= LONGEST_PIECE ? PIECE + KANA * length : Infinity;
      const cost = (best[from]?.cost ?? Infinity) + own;
      if (cost < here.cost) here = { cost, from };
    }
    best.push(here);
  }
  const found: string[] = [];
  for (let end = run.length; end > 0; end = best[end]?.from ?? 0) found.unshift(run.slice(best[end]?.from ?? 0, end));
  return found.join(' ');
}

/** Before "てん" numbers are said short: "いってん". */
const SHORT: Readonly<Record<string, string>> = { いっ: 'いち', はっ: 'はち', じゅっ: 'じゅう', にい: 'に', ごう: 'ご', ごお: 'ご' };
const DECIMAL = new RegExp(`(${Object.keys(SHORT).join('|')})てん(?=${Array.from({ length: 10 }, (_, digit) => sayWhole(digit)).join('|')}|\\d)`, 'g');

export const parted = (text: string): string =>
  inKana(text)
    .replace(DECIMAL, (_, short: string) => `${SHORT[short]}てん`)
    // Right behind figures it is no two: "プラス5に".
    .replace(/(\d)に(?![ぁ-ゖ])/g, '$1 ')
    .replace(/[ぁ-ゖ々]+/g, (run) => ` ${words(run)} `);
