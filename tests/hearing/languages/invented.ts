// A tiny language that nobody speaks, to show that what matches heard words knows no English: its words have accents, its
// numbers are joined by strokes, and it stresses the last vowel but one.
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import type { HeardLanguage, HeardWord } from '../../../src/hearing/languages/heardLanguage.ts';

const SAID: Readonly<Record<Word, string>> = {
  solid: 'mábu',
  delayed: 'tolára',
  flicker: 'zizi',
  nothing: 'hôm',
  left: 'gevo',
  right: 'suna',
  balanced: 'papako',
  lopsided: 'drelu',
  holding: 'wanimo',
  undo: 'fezu',
  repeat: 'olo ti',
  pause: 'bruma',
  resume: 'chalu',
  skip: 'vipo',
  accept: 'nadoré',
  'go on': 'luvi se',
  set: 'kotu',
  same: 'yagi',
  shifted: 'shobe',
  finish: 'zemola',
  help: 'awu',
  entered: 'tedu',
  next: 'rimba',
  back: 'gulpo',
};

const also: Partial<Record<Word, readonly string[]>> = { solid: ['mábu vel'], undo: ['fezu ta'] };
const misheard: Partial<Record<Word, readonly string[]>> = { holding: ['chwany'] };

const DIGITS = ['nul', 'ká', 'béle', 'tíri', 'foso', 'luma', 'sesa', 'joto', 'voka', 'nime'] as const;

function say(whole: number): string {
  const [hundreds, tens, ones] = [Math.floor(whole / 100), Math.floor(whole / 10) % 10, whole % 10];
  const parts = [
    hundreds > 1 ? `${say(hundreds)}-hon` : hundreds === 1 ? 'hon' : '',
    tens > 1 ? `${DIGITS[tens]}-dek` : tens === 1 ? 'dek' : '',
    ones > 0 || whole === 0 ? DIGITS[ones] : '',
  ];
  return parts.filter(Boolean).join('-');
}

const SOUNDS: Readonly<Record<string, string>> = {
  a: 'o',
  b: 'b',
  d: 'd',
  e: 'x',
  f: 'f',
  g: 'g',
  h: 'h',
  i: 'i',
  j: '3',
  k: '1',
  l: 'l',
  m: 'm',
  n: 'n',
  o: 'w',
  p: 'p',
  r: '@',
  s: 's',
  t: 't',
  u: 'v',
  v: '9',
  w: '#',
  y: '$',
  z: '0',
};

const wordOf = (word: Word): HeardWord => ({ say: SAID[word], also: also[word] ?? [], misheard: misheard[word] ?? [] });

export const INVENTED: HeardLanguage = {
  tag: 'art',
  words: Object.fromEntries(WORDS.map((word) => [word, wordOf(word)])) as Record<Word, HeardWord>,
  signs: { plus: ['dúpi'], minus: ['harô'] },
  setting: ['kotu', 'kotu la'],
  around: { courtesies: ['eh'], articles: ['lá'], frames: [], places: [], everyday: [] },
  numbers: { say, also: () => [], zeros: ['nulo'], point: 'pika', letter: /^[b-z]$/, ordinals: [] },
  misheardNumbers: { spellings: { gosling: 'sesa' }, takenFor: [[20, 12]] },
  question: { openings: ['wusha'], everyday: [], fillers: ['wusha', 'den', 'li'] },
  naming: { openings: ['rimba'], noNames: ['gesta'] },
  pronunciation: {
    words: '',
    letters: [['ch', '2'], ['sh', '7'], ...Object.entries(SOUNDS)],
    endings: [],
    shortened: /(?!)/,
    doubled: 'bdfghjklmnprstvwyz',
    stress: 'last but one',
    weakly: /(?!)/,
  },
};
