// Spanish: how letters sound. Its spelling says nearly all of it, so what stands in the list is what accents told before they were taken
// off. `s` and `z` are told apart, as in most of Spain; who makes them alike is as near as ever.
import type { Phones } from '../sounds.ts';
import type { Pronunciation } from '../pronunciation.ts';

type Rule = readonly [letters: string, sounds: Phones];

/** Longest first. Two of the open vowels are two syllables. */
const VOWELS: readonly Rule[] = [
  ['uay', '#z'],
  ['uai', '#z'],
  ['uey', '#e'],
  ['uei', '#e'],
  ['iai', '$z'],
  ['iei', '$e'],
  ['ay$', 'z'],
  ['ey$', 'e'],
  ['oy$', 'j'],
  ['uy$', '#i'],
  ['ia', '$o'],
  ['ie', '$x'],
  ['io', '$w'],
  ['iu', '$v'],
  ['ua', '#o'],
  ['ue', '#x'],
  ['ui', '#i'],
  ['uo', '#w'],
  ['ai', 'z'],
  ['ei', 'e'],
  ['oi', 'j'],
  ['au', 'k'],
  ['eu', 'x#'],
  ['a', 'o'],
  ['e', 'x'],
  ['i', 'i'],
  ['o', 'w'],
  ['u', 'v'],
];

/** A consonant that sounds so before "e" and "i" only. */
const before = (letters: string, sound: Phones): readonly Rule[] =>
  VOWELS.filter(([vowel]) => /^[ei]/.test(vowel)).map(([vowel, sounds]) => [letters + vowel, sound + sounds]);

export const LETTERS: Pronunciation['letters'] = [
  ['^y$', 'i'],
  ['^ps', 's'],
  ['^x', 's'],
  ['^hue', '#x'],
  ['^hie', '$x'],
  ['ch', '2'],
  ['ll', '$'],
  ['rr', '@'],
  ['^sh', '7'],
  ['sh$', '7'],
  ['ck', '1'],
  ['ph', 'f'],
  ['nv', 'mb'],
  ['nb', 'mb'],
  ['np', 'mp'],
  ...before('qu', '1'),
  ...before('gu', 'g'),
  ...before('c', '4'),
  ...before('g', 'h'),
  ...VOWELS,
  ['y', '$'],
  ['b', 'b'],
  ['c', '1'],
  ['d', 'd'],
  ['f', 'f'],
  ['g', 'g'],
  ['h', ''],
  ['j', 'h'],
  ['k', '1'],
  ['l', 'l'],
  ['m', 'm'],
  ['n', 'n'],
  ['p', 'p'],
  ['q', '1'],
  ['r', '@'],
  ['s', 's'],
  ['t', 't'],
  ['v', 'b'],
  ['w', '#'],
  ['x', '1s'],
  ['z', '4'],
];

/** Plural, gender and the commonest forms of verbs. */
export const ENDINGS: Pronunciation['endings'] = [
  ['s', 's'],
  ['es', 'xs'],
  ['o', 'w'],
  ['a', 'o'],
  ['os', 'ws'],
  ['as', 'os'],
  ['n', 'n'],
  ['r', '@'],
  ['ar', 'o@'],
  ['ir', 'i@'],
  ['ado', 'odw'],
  ['ada', 'odo'],
  ['ando', 'ondw'],
  ['mos', 'mws'],
  ['amos', 'omws'],
  ['emos', 'xmws'],
  ['imos', 'imws'],
  ['an', 'on'],
  ['en', 'xn'],
  ['aron', 'o@wn'],
  ['ido', 'idw'],
  ['iendo', '$xndw'],
];

/** Two syllables that end in a consonant other than "n" and "s". */
export const WEAKLY = /^[^aeiou]*[aeiou]{1,2}[^aeiou]+[aeiou]{1,2}[bcdfghj-mp-rtvxz]$/;

/** All but those that sound otherwise when written twice. */
export const DOUBLED = 'bdfgjkmnpqstvwz';
