// The sounds of Japanese, and how far apart what is told stands.
import { expect, test } from 'vitest';
import { JAPANESE } from '../../../../src/hearing/languages/ja/japanese.ts';
import { READINGS, UNREAD } from '../../../../src/hearing/languages/ja/readings.ts';
import { WORDS } from '../../../../src/sweep/inputs.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { hearingIn } from '../heard.ts';

const parted = (text: string): string => JAPANESE.parted?.(text).trim().replace(/\s+/g, ' ') ?? text;

const { apart } = hearingIn(JAPANESE);

test.each([
  ['遅れ', 'つかない'],
  ['入力', '取り消し'],
])('%s and %s, of which one taken for the other would mislead, are far apart', (one, other) => {
  expect(apart(one, other)).toBeGreaterThan(0.5);
});

test.each([
  ['きゅう', '1$Qh'],
  ['しゃしん', '7O7In'],
  ['ちゅうい', '2QhI'],
  ['じゅっぷん', '3Qpfn'.replace('pfn', 'pQn')],
  ['ふつう', 'fQtsQh'],
  ['フィルター', 'fI@QtO'],
  ['です', 'dXs'],
  ['さいかい', 'sOI1OI'],
  ['せいかい', 'sXh1OI'],
  ['おおきい', 'Wh1Ih'],
])('%s sounds as %s', (written, phones) => {
  expect(pronouncer(JAPANESE.pronunciation)(parted(written).replaceAll(' ', ''))).toBe(phones);
});

test.each([
  ['再開', '再会'],
  ['遅れ', '送れ'],
  ['確定', '各停'],
  ['チカチカ', '地価地価'],
  ['もう一度', 'もう1度'],
  ['ポーズ', 'ぽーず'],
  ['取消', '取り消し'],
])('%s and %s sound the same', (one, other) => {
  expect(apart(one, other)).toBe(0);
});

test.each([
  ['セットプラス12', 'せっと ぷらす 12'],
  ['プラス二十一', 'ぷらす 21'],
  ['マイナス5に', 'まいなす 5'],
  ['左の矢印です', 'ひだりのやじるし です'],
  ['一番', '1 ばん'],
  ['八五', '8 5'],
  ['ハチジュウゴ', 'はちじゅうご'],
  ['ﾊﾞｯﾁﾘ', 'ばっちり'],
  ['ちかちかーっ', 'ちかちか'],
])('"%s" is parted as "%s"', (text, words) => {
  expect(parted(text)).toBe(words);
});

test('every phrase of its own can be read', () => {
  const { courtesies, frames, places } = JAPANESE.around;
  const phrases = [
    ...WORDS.flatMap((word) => [JAPANESE.words[word].say, ...JAPANESE.words[word].also]),
    ...courtesies,
    ...frames,
    ...places,
    ...JAPANESE.setting,
  ];
  expect(phrases.filter((phrase) => parted(phrase).includes(UNREAD))).toEqual([]);
});

test('no character has two readings', () => {
  const characters = READINGS.trim()
    .split('\n')
    .flatMap((line) => [...(line.split(' ')[1] ?? '')]);
  expect(characters.length).toBe(new Set(characters).size);
});
