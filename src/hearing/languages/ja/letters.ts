// Japanese: how kana sound. Every vowel is full, as none is weak for want of stress; a long one sounds nearly as a short one
// does, as listeners and recognisers often miss how long it was, and a doubled consonant as a single one.
import type { Pronunciation } from '../pronunciation.ts';
import { ROWS } from './hiragana.ts';
import { UNREAD } from './readings.ts';

const VOWELS = ['O', 'I', 'Q', 'X', 'W'] as const;

/** Five kana, and what stands before their vowels. */
const COLUMNS: readonly (readonly [kana: string, consonants: string])[] = [
  ['かきくけこ', '1'],
  ['がぎぐげご', 'g'],
  ['さしすせそ', 's7sss'],
  ['ざじずぜぞ', '03000'],
  ['たちつてと', 't2tt'],
  ['だぢづでど', 'd30dd'],
  ['なにぬねの', 'n'],
  ['はひふへほ', 'hhfhh'],
  ['ばびぶべぼ', 'b'],
  ['ぱぴぷぺぽ', 'p'],
  ['まみむめも', 'm'],
  ['らりるれろ', '@'],
];

const plain: (readonly [string, string])[] = [
  ...[...'あいうえお'].map((kana, at) => [kana, VOWELS[at] ?? ''] as const),
  ...COLUMNS.flatMap(([kana, consonants]) =>
    [...kana].map((one, at) => [one, (consonants[at] ?? consonants[0] ?? '') + (one === 'つ' ? 's' : '') + VOWELS[at]] as const),
  ),
  ['や', '$O'],
  ['ゆ', '$Q'],
  ['よ', '$W'],
  ['わ', '#O'],
  ['を', 'W'],
];

/** Sounds that take the tongue to the palate need no glide before "ゃ", "ゅ", "ょ". */
const PALATAL = '723';
const SMALL = { ゃ: 'O', ゅ: 'Q', ょ: 'W' } as const;
/** Of loanwords: what stands before the small vowel. */
const FOREIGN = { ふ: 'f', て: 't', で: 'd', う: '#', し: '7', じ: '3', ち: '2', つ: 'ts', と: 't', ど: 'd', く: '1#', ぶ: 'b' } as const;
const SMALL_VOWELS = 'ぁぃぅぇぉ';

const joined: (readonly [string, string])[] = [
  ...plain
    .filter(([kana]) => 'きぎしじちぢにひびぴみり'.includes(kana))
    .flatMap(([kana, sounds]) => {
      const consonant = sounds.slice(0, -1);
      return Object.entries(SMALL).map(([small, vowel]) => [kana + small, consonant + (PALATAL.includes(consonant) ? '' : '$') + vowel] as const);
    }),
  ...Object.entries(FOREIGN).flatMap(([kana, consonant]) => [...SMALL_VOWELS].map((small, at) => [kana + small, consonant + VOWELS[at]] as const)),
  ['でゅ', 'd$Q'],
  ['てゅ', 't$Q'],
];

/** A long vowel is no more than breath longer. */
const LENGTH = 'h';
/** What makes the vowel of a kana long. */
const LENGTHENED: Readonly<Record<string, string>> = { あ: 'あ', い: 'い', う: 'う', え: 'いえ', お: 'うお' };
const lengthsOf = (kana: string): string => LENGTHENED[Object.keys(ROWS).find((vowel) => ROWS[vowel]?.includes(kana.at(-1) ?? '')) ?? ''] ?? '';
const alsoLong = ([kana, sounds]: readonly [string, string]): (readonly [string, string])[] => [
  ...[...lengthsOf(kana)].map((length) => [kana + length, sounds + LENGTH] as const),
  [kana, sounds],
];

/** Words in the Latin script are read as Japanese writes itself in it. */
const LATIN = [...'abcdefghijklmnopqrstuvwxyz'].map((letter, at) => [letter, 'Ob1dXfghI31@mnWp1@stQb#s$0'.charAt(at)] as const);

export const LETTERS: Pronunciation['letters'] = [
  // The last vowel is not voiced.
  ['です$', 'dXs'],
  ['ます$', 'mOs'],
  ...joined.flatMap(alsoLong),
  ...plain.flatMap(alsoLong),
  ['ん', 'n'],
  ['っ', ''],
  [UNREAD, '4R4R'],
  ...LATIN,
];
