// The sounds of Japanese, and how far apart what is told stands.
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../../src/hearing/languages/en/english.ts';
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import { JAPANESE } from '../../../../src/hearing/languages/ja/japanese.ts';
import { READINGS, UNREAD } from '../../../../src/hearing/languages/ja/readings.ts';
import { WORDS } from '../../../../src/sweep/inputs.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { soundDistance } from '../../../../src/voice/phonetic/soundDistance.ts';
import { inPhase } from '../../../sweep/staged.ts';

const parted = (text: string): string => JAPANESE.parted?.(text).trim().replace(/\s+/g, ' ') ?? text;

function soundsIn({ parted: part, pronunciation }: HeardLanguage): (phrase: string) => string {
  const pronounce = pronouncer(pronunciation);
  return (phrase) =>
    (part?.(phrase) ?? phrase)
      .split(/[\s-]+/)
      .filter(Boolean)
      .map(pronounce)
      .join('');
}
const sounds = soundsIn(JAPANESE);

/** The least distance between two of what may be told at one moment, and which they are. */
function nearest(language: HeardLanguage): { apart: number; one: string; other: string } {
  const sound = soundsIn(language);
  const pairs = (['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'finished'] as const).flatMap((phase) => {
    const words = understood(inPhase(phase)).words;
    const signs = words.includes('set') ? [language.signs.plus[0], language.signs.minus[0]] : [];
    const said = [...words.map((word) => language.words[word].say), ...signs, language.question.openings[0]];
    return said.flatMap((one, at) => said.slice(0, at).map((other) => ({ apart: soundDistance(sound(one), sound(other)), one, other })));
  });
  return pairs.reduce((least, pair) => (pair.apart < least.apart ? pair : least));
}

test('what may be told at one moment is farther apart than in English', () => {
  expect(nearest(JAPANESE).apart).toBeGreaterThan(0.4);
  expect(nearest(JAPANESE).apart).toBeGreaterThan(nearest(ENGLISH).apart);
});

test.each([
  ['左', '右'],
  ['均等', '偏り'],
  ['バッチリ', 'チカチカ'],
  ['バッチリ', '遅れ'],
  ['バッチリ', 'つかない'],
  ['遅れ', 'つかない'],
  ['同じ', 'ズレた'],
  ['確定', '続ける'],
  ['入力', '取り消し'],
  ['プラス', 'マイナス'],
])('%s and %s, of which one taken for the other would mislead, are far apart', (one, other) => {
  expect(soundDistance(sounds(one), sounds(other))).toBeGreaterThan(0.5);
});

test('no word sounds like a number, a sign, or what begins a question, where these may be told', () => {
  const numbers = Array.from({ length: 51 }, (_, number) => JAPANESE.numbers.say(number));
  for (const word of (['dialling', 'offered'] as const).flatMap((phase) => understood(inPhase(phase)).words)) {
    for (const other of [...numbers, 'プラス', 'マイナス', '検索']) {
      const { say } = JAPANESE.words[word];
      expect({ say, other, apart: soundDistance(sounds(say), sounds(other)) > 0.32 }).toEqual({ say, other, apart: true });
    }
  }
});

describe('numbers', () => {
  test('below twenty-one stand no nearer than English ones do', () => {
    const least = (language: HeardLanguage): number => {
      const sound = soundsIn(language);
      const said = Array.from({ length: 21 }, (_, number) => sound(language.numbers.say(number)));
      return Math.min(...said.flatMap((one, at) => said.slice(0, at).map((other) => soundDistance(one, other))));
    };
    expect(least(JAPANESE)).toBeGreaterThanOrEqual(least(ENGLISH));
  });
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
  expect(soundDistance(sounds(one), sounds(other))).toBe(0);
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
