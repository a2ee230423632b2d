// Japanese: a text, which has no blanks between its words, parted into words that are known to be told or to stand around what is told.
// What none of them is stays together in short pieces: the parting with the fewest pieces is taken.
import { ALSO } from './also.ts';
import { AROUND, SETTING, SETTING_BEHIND, SIGNS, TOWARDS } from './around.ts';
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
/** Of a number that is said in another way, the usual one; what is a single kana is told by what stands before it. */
const usual = new Map(
  Array.from({ length: LARGEST }, (_, at) => otherWays(at + 1).map((way) => [way, sayWhole(at + 1)] as const))
    .flat()
    .filter(([way]) => way.length > 1),
);
const numbers = new Set(Array.from({ length: LARGEST + 1 }, (_, whole) => [sayWhole(whole), ...otherWays(whole)]).flat());
const known = new Set([...phrases.map(inKana), ...numbers]);
const longest = Math.max(...[...known].map((word) => word.length));

/** A known word, one of a single kana, and a piece that is none with each of its kana. */
const WORD = 0.9;
const SHORT_WORD = 1;
const PIECE = 0.1;
const KANA = 1;
const LONGEST_PIECE = 4;
/** No piece begins with one of these. */
const DEPENDENT = 'ぁぃぅぇぉっゃゅょ';
const SHORT_NUMBERS = ['に', 'し', 'ご', 'く'];
/** What ends a sentence, or stands behind a word, begins none. */
const ENDINGS = ['ね', 'よ', 'な', 'さ', 'わ', 'だ', 'で'];
/** Short words that stand beside numbers. */
const BESIDE_NUMBERS = ['です', 'みり', 'てん', 'の', 'を', 'と', 'から'];

function words(run: string, beginsPart: boolean): string {
  const best: { cost: number; from: number }[] = [{ cost: 0, from: 0 }];
  for (let end = 1; end <= run.length; end++) {
    let here = { cost: Infinity, from: 0 };
    for (let from = Math.max(0, end - longest); from < end; from++) {
      const length = end - from;
      const own = known.has(run.slice(from, end))
        ? length > 1
          ? WORD
          : SHORT_WORD
        : length <= LONGEST_PIECE && (from === 0 || !DEPENDENT.includes(run.charAt(from)))
          ? PIECE + KANA * length
          : Infinity;
      const cost = (best[from]?.cost ?? Infinity) + own;
      if (cost < here.cost) here = { cost, from };
    }
    best.push(here);
  }
  const found: string[] = [];
  for (let end = run.length; end > 0; end = best[end]?.from ?? 0) found.unshift(run.slice(best[end]?.from ?? 0, end));
  return together(found, beginsPart).join(' ');
}

/**
 * A number of one kana may be a particle or an ending: it is none behind a piece that is no word. And what is short beside a number in
 * kana may be a part of it that was misheard, whatever else it means: "じゅうな" may have been "じゅうなな".
 */
function together(found: readonly string[], beginsPart: boolean): string[] {
  const joined: string[] = [];
  let isNumber = false;
  for (const [at, word] of found.entries()) {
    const before = joined.at(-1);
    const behindPiece: boolean = SHORT_NUMBERS.includes(word) && before !== undefined && !known.has(before);
    const behindNumber: boolean = isNumber && isShort(word);
    const behindEnding = beginsPart && at === 1 && ENDINGS.includes(found[0] ?? '');
    const beforeNumber = numbers.has(word) && at > 0 && isShort(found[at - 1] ?? '');
    if (before !== undefined && (behindPiece || behindNumber || beforeNumber || behindEnding)) joined.splice(-1, 1, before + word);
    else joined.push(usual.get(word) ?? word);
    isNumber = numbers.has(word) || behindNumber;
  }
  return joined;
}

const isShort = (word: string): boolean => word.length <= 2 && !numbers.has(word) && !BESIDE_NUMBERS.includes(word);

/** Before "てん" numbers are said short: "いってん". */
const BEFORE_POINT: Readonly<Record<string, string>> = { いっ: 'いち', はっ: 'はち', じゅっ: 'じゅう', にい: 'に', ごう: 'ご', ごお: 'ご' };
const DECIMAL = new RegExp(`(${Object.keys(BEFORE_POINT).join('|')})てん(?=${Array.from({ length: 10 }, (_, digit) => sayWhole(digit)).join('|')}|\\d)`, 'g');

const SIGN_TOWARDS = new RegExp(`(${[SIGNS.plus[0], SIGNS.minus[0]].map(inKana).join('|')})(?:${TOWARDS})(?=\\s*\\d)`, 'g');

/** Zero has no sign to be known by, so what sets it is moved before it: "ゼロにセット". */
const ZERO_SET = new RegExp(`^\\s*(${[sayWhole(0), ...otherWays(0), '0'].join('|')})(?:${SETTING_BEHIND.map(inKana).join('|')})(?![ぁ-ゖ])`, 'g');

export const parted = (text: string): string =>
  inKana(text)
    .replace(DECIMAL, (_, short: string) => `${BEFORE_POINT[short]}てん`)
    .replace(SIGN_TOWARDS, '$1 ')
    .replace(ZERO_SET, `${inKana(TAUGHT.set)} $1`)
    // Right behind figures it is no two: "プラス5に".
    .replace(/(\d)に(?![ぁ-ゖ])/g, '$1 ')
    .replace(/[ぁ-ゖ々]+/g, (run: string, at: number, whole: string) => ` ${words(run, !/\d$/.test(whole.slice(0, at)))} `);
