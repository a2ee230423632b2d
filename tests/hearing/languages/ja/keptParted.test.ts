// How Japanese text is parted into words and read in kana, kept: known phrases run together, numbers in every way of writing, pieces that
// are no words, and what stands beside a number.
import { expect, test } from 'vitest';
import { ALSO } from '../../../../src/hearing/languages/ja/also.ts';
import { inHiragana, ROWS } from '../../../../src/hearing/languages/ja/hiragana.ts';
import { otherWays } from '../../../../src/hearing/languages/ja/numbers.ts';
import { parted } from '../../../../src/hearing/languages/ja/parted.ts';
import { inKana } from '../../../../src/hearing/languages/ja/reading.ts';
import { sayWhole } from '../../../../src/hearing/languages/ja/say.ts';
import { TAUGHT } from '../../../../src/hearing/languages/ja/words.ts';
import { seededRandom } from '../../../../src/practice/random.ts';

const KANA = Object.values(ROWS).flatMap((row) => [...row]);
const SHORT = [
  'に',
  'し',
  'ご',
  'く',
  'ね',
  'よ',
  'な',
  'さ',
  'わ',
  'だ',
  'で',
  'です',
  'みり',
  'てん',
  'の',
  'を',
  'と',
  'から',
  'は',
  'ん',
  'っ',
  'ゃ',
  'あい',
];

/** So many texts, each of some pieces, drawn from every row alike. */
function thrown(seed: number, count: number, most: number, of: readonly (readonly string[])[]): string[] {
  const random = seededRandom(seed);
  const one = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
  return Array.from({ length: count }, () => Array.from({ length: 1 + Math.floor(random() * most) }, () => one(one(of))).join(''));
}

const numbers = Array.from({ length: 2000 }, (_, whole) => sayWhole(whole));
const below = numbers.slice(0, 25);
const phrases = [...Object.values(TAUGHT), ...Object.values(ALSO).flat()];

const shown = (texts: readonly string[]): string[] => texts.map((text) => `${text}: ${parted(text).trim().replace(/\s+/g, ' ')}`);

test('phrases and numbers run together with what is short', () => {
  expect(shown(thrown(71, 120, 4, [phrases, below, SHORT]))).toMatchSnapshot();
});

test('kana thrown together', () => {
  expect(shown(thrown(72, 90, 8, [KANA, KANA, SHORT]))).toMatchSnapshot();
});

test('each short word before and behind a number, in kana and in figures', () => {
  expect(shown(SHORT.flatMap((word) => [`${word}さん`, `さん${word}`, `じゅう${word}なな`, `ぬ${word}`, `7${word}`, `${word}7`, `${word}ひだり`, `7${word}ね`]))).toMatchSnapshot(); // prettier-ignore
});

test('every number to 1999 stays one word, in its usual way', () => {
  const words = numbers.map((said) => parted(said).trim());
  expect(words.flatMap((word, whole) => (word === numbers[whole] ? [] : [`${numbers[whole]} ${word}`]))).toEqual([]);
  const wholes = [0, 4, 7, 9, 14, 17, 19, 44, 99, 104, 1004, 1997, 1999];
  expect(wholes.map((whole) => otherWays(whole).map((way) => `${way} ${parted(way).trim()}`).join(', '))).toMatchSnapshot(); // prettier-ignore
});

test('numbers in characters', () => {
  const characters = ['〇', '零', '十', '百', '千', '一', '二', '九'];
  const written = [
    '十',
    '二十',
    '十二',
    '二十一',
    '百',
    '百一',
    '二百',
    '千',
    '千百十一',
    '千九百九十九',
    '七十二百',
    '二一',
    '〇',
    '一〇',
    '十十',
    '百千',
    '二千三',
  ];
  expect([...written, ...thrown(73, 80, 5, [characters])].map((text) => `${text} ${inKana(text)}`)).toMatchSnapshot();
});

test('long vowels, small kana and other spellings in hiragana', () => {
  const marks = ['ー', '〜', 'っ', 'ぁ', 'ぃ', 'ぅ', 'ぇ', 'ぉ'];
  const texts = [...'あいうえおんかきくけこゔぢづカヴァ'].flatMap((kana) => [...marks.map((mark) => `${kana}${mark}た`), `${kana}ーー`, `${kana}っ`]);
  expect(texts.map((text) => `${text} ${inHiragana(text)}`).join(', ')).toMatchSnapshot();
});

test('signs, decimals, zero that is set behind, Latin letters and what cannot be read', () => {
  const texts = ['ー5', 'プラスー5', 'aー5', 'プラス1.4', 'いってんよん', 'はってんろく', 'じゅってん5', 'にいてんはち', 'プラスのほうに5', 'プラスに5', 'マイナスへ 5', 'ゼロにセット', '0に設定して', 'れいにせっとです', 'ゼロにセットだ', '5に', '5にね', '5に。', 'OK5', 'book', '人々', '明々', '龘', '遅れた', '85mm', '3.5.2', '']; // prettier-ignore
  expect(texts.map((text) => `${text}: ${inKana(text)}: ${parted(text).trim().replace(/\s+/g, ' ')}`)).toMatchSnapshot();
});
