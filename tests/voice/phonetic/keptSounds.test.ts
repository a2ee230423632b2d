// Sounds of words, kept: of what each language knows and of made-up spellings, so that no rule for letters changes unseen.
import { expect, test } from 'vitest';
import { GERMAN } from '../../../src/hearing/languages/de/german.ts';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { SPANISH } from '../../../src/hearing/languages/es/spanish.ts';
import { FRENCH } from '../../../src/hearing/languages/fr/french.ts';
import { JAPANESE } from '../../../src/hearing/languages/ja/japanese.ts';
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import type { Pronunciation } from '../../../src/hearing/languages/pronunciation.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { bareWordsIn } from '../../../src/voice/phonetic/spokenText.ts';
import { talkIn } from '../keptTalk.ts';

test.each<[string, HeardLanguage]>([
  ['English', ENGLISH],
  ['German', GERMAN],
  ['Spanish', SPANISH],
  ['French', FRENCH],
  ['Japanese', JAPANESE],
])('of words in %s', (_, language) => {
  const pronounce = pronouncer(language.pronunciation);
  const words = new Set(talkIn(language, 150, 41).flatMap(bareWordsIn(language)));
  expect([...words].map((word) => `${word} ${pronounce(word)}`).join(', ')).toMatchSnapshot();
});

const TINY: Pronunciation = {
  words: 'tale tEl\nmark mO@1\nhop hOp',
  letters: [['$', 'z'], ['^k', 'h'], ['n$', '8'], ['c/ei', 's'], ['c', '1'], ...[...'abdefghiklmnoprst'].map((letter) => [letter, letter] as const)],
  endings: [
    ['ing', 'y8', 'e'],
    ['ed', 't'],
    ['s', '0', ''],
  ],
  shortened: /^not/,
  doubled: 'pt',
  stress: 'first',
  weakly: /^be/,
};

test.each([
  ['a listed word', 'mark', 'mO@1'],
  ['a listed word with an ending', 'marked', 'mO@1t'],
  ['a listed word that loses a letter before the ending', 'taling', 'tEly8'],
  ['no letter is lost before another ending', 'taled', 'tAled'],
  ['a word that is known to lose a letter although it is not listed', 'noting', 'nOtey8'],
  ['an ending that may lose none is part of what is sounded where nothing is listed', 'noted', 'nOted'],
  ['a letter written twice sounds once where the language says so', 'happo', 'hApo'],
  ['and twice where it does not', 'hasso', 'hAsso'],
  ['the start of a word', 'kak', 'hAk'],
  ['the end of a word', 'nan', 'nA8'],
  ['a letter before one of those it looks for', 'ceca', 'sE1a'],
  ['a letter without a rule has no sound', 'xaxb', 'Ab'],
  ['a weak beginning leaves the stress to the next', 'bena', 'benA'],
  ['but for a word of one vowel', 'ben', 'bE8'],
  ['a word without a vowel has no stress', 'st', 'st'],
  ['the end of a word has no sound by itself', 'ta', 'tA'],
  ['nothing', '', ''],
])('%s', (_, word, sounds) => {
  const pronounce = pronouncer(TINY);
  expect([pronounce(word), pronounce(word)]).toEqual([sounds, sounds]);
});

test.each<[Pronunciation['stress'], readonly string[]]>([
  ['first', ['A', 'Ata', 'Atata', 't']],
  ['last but one', ['A', 'Ata', 'atAta', 't']],
  ['last', ['A', 'atA', 'atatA', 't']],
])('the stressed vowel is the %s one', (stress, sounds) => {
  expect(['a', 'ata', 'atata', 't'].map(pronouncer({ ...TINY, stress, weakly: /(?!)/ }))).toEqual(sounds);
});
