// The alphabet in which a language tells how its words sound: one letter a sound, the same for every language. How alike
// two of them are is the matcher's business.

/** One sound, one letter. Capital vowels are stressed. The key is in `SYMBOLS`. */
export type Phones = string;

/** From the names of the Carnegie Mellon pronouncing dictionary to one letter each. */
export const SYMBOLS: Readonly<Record<string, string>> = {
  IY: 'i',
  IH: 'y',
  EY: 'e',
  EH: 'x',
  AE: 'a',
  AA: 'o',
  AO: 'c',
  AH: 'u',
  OW: 'w',
  UH: 'q',
  UW: 'v',
  ER: 'r',
  AY: 'z',
  AW: 'k',
  OY: 'j',
  P: 'p',
  B: 'b',
  T: 't',
  D: 'd',
  K: '1',
  G: 'g',
  CH: '2',
  JH: '3',
  F: 'f',
  TH: '4',
  DH: '5',
  S: 's',
  ZH: '6',
  SH: '7',
  HH: 'h',
  M: 'm',
  N: 'n',
  NG: '8',
  L: 'l',
  V: '9',
  Z: '0',
  R: '@',
  W: '#',
  Y: '$',
};

/** The letters above that are vowels. */
export const VOWEL_LETTERS = 'iyexaocuwqvrzkj';
