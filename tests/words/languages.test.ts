// Contract of the catalogue in every language: no sentence is missing or left in English, none is made of nothing, and none writes out a
// word to say that another language is heard by.
import { beforeAll, describe, expect, test } from 'vitest';
import { HEARD } from '../../src/hearing/languages.ts';
import { LANGUAGES, type Language } from '../../src/language.ts';
import { changeLanguages } from '../../src/words/catalogue.ts';
import { ALIKE, NAMES, SHARED, UNITS } from './alike.ts';
import { saidBy, sentencesByType, type Sentence } from './sentences.ts';

type Said = readonly (readonly (string | null)[])[];
const OTHERS = LANGUAGES.filter((language) => language !== 'en');
const BROKEN = /undefined|NaN|\[object|Invalid|\$\{/;
/** In German it is a number. */
const isBroken = (text: string, language: Language): boolean => BROKEN.test(text) || (language !== 'de' && /\bnull\b/.test(text));
const ENGLISH = /(?<!\p{L})(the|and|of|with|from|this|that|which|are|is|was|were|have|has|been|will|your|you|it|its|not|into|than|then|for)(?!\p{L})/giu;
/** As languages write units short; a blank before one that belongs to it would let it go into the next line. */
const PARTED = /\d (mm|cm|m|ft|pi|po|s|secs?|mins?|hrs?|h|Sek\.|Min\.|Std\.|°C?|%|Hz|lux)(?![\p{Script=Latin}’])/u;
/** In French a blank stands before these marks, and after the first of them. */
const PARTED_MARK = /[^ ] [:;!?%»]|« /u;
const QUOTED = /[“„«「『"‚‘]\s*([^”“»」』"’]{1,40}?)\s*[”“»」』"’]/g;

let sentences: readonly Sentence[] = [];
let english: Said = [];
const own = new Map<Language, Said>();
/** The same while another language is heard, which has no word in common. */
const besideAnother = new Map<Language, Said>();

async function saidIn(screens: Language, voice: Language): Promise<Said> {
  await changeLanguages({ screens, voice });
  return sentences.map(saidBy);
}

beforeAll(async () => {
  sentences = sentencesByType();
  english = await saidIn('en', 'en');
  for (const language of OTHERS) {
    own.set(language, await saidIn(language, language));
    besideAnother.set(language, await saidIn(language, language === 'ja' ? 'en' : 'ja'));
  }
}, 180_000);

const named = ({ area, at }: Sentence): string => `${area}: ${at}`;
const bare = (text: string): string =>
  text
    .replace(NAMES, '')
    .replace(UNITS, '')
    .replace(/[^\p{L} ]/gu, '')
    .trim();

/** What a sentence says that could be in a language at all, where it is the same as in English; null where it is another. */
function leftAsInEnglish(of: readonly (string | null)[], inEnglish: readonly (string | null)[]): string | null {
  const worded = inEnglish.flatMap((text, at) => (text !== null && bare(text) !== '' ? [at] : []));
  return worded.length > 0 && worded.every((at) => of[at] === inEnglish[at]) ? bare(inEnglish[worded[0] ?? 0] ?? '') : null;
}

/** Of every text that is said in a language, those that are wrong, with their places. */
const wrongIn = (said: Said, isWrong: (text: string | null, at: number, row: number) => boolean): string[] =>
  said.flatMap((texts, at) => texts.flatMap((text, row) => (isWrong(text, at, row) ? [`${named(sentences[at] as Sentence)}: ${text}`] : [])));

test('every sentence of English can be made of what it may be told, and says something', () => {
  expect(sentences.length).toBeGreaterThan(1500);
  expect(wrongIn(english, (text) => text === null || isBroken(text, 'en'))).toEqual([]);
});

test.each(LANGUAGES)('in %s a number and its unit stand in one line', (language) => {
  const said = language === 'en' ? english : (own.get(language) ?? []);
  expect(wrongIn(said, (text) => text !== null && PARTED.test(text))).toEqual([]);
  expect(said.flat().filter((text) => text !== null && /\d[\u00a0\u202f]mm/u.test(text)).length).toBeGreaterThan(100);
});

test('in French no mark stands alone at the beginning of a line', () => {
  // A name of a unit may stand alone after a comma.
  expect(wrongIn(own.get('fr') ?? [], (text) => text !== null && PARTED_MARK.test(text.replaceAll(', %', '')))).toEqual([]);
});

test('in numbers', () => {
  const rows = [...new Set(sentences.map(({ area }) => area))].map((area) => {
    const places = sentences.flatMap((one, at) => (one.area === area && english[at]?.some(Boolean) ? [at] : []));
    const alike = OTHERS.map((language) => places.filter((at) => leftAsInEnglish(own.get(language)?.[at] ?? [], english[at] ?? []) !== null).length);
    const same = OTHERS.map((language, at) => `${language} ${alike[at]}`).join('  ');
    return { line: `${area.padEnd(18)} ${String(places.length).padStart(4)}   ${same}`, count: places.length };
  });
  const all = rows.reduce((sum, { count }) => sum + count, 0);
  console.log(['Sentences, and how many are the same as in English:', ...rows.map(({ line }) => line), `${all} sentences in each language`].join('\n'));
  expect(all).toBeGreaterThan(1500);
});

describe.each(OTHERS)('in %s', (language) => {
  const said = (): Said => own.get(language) ?? [];

  test('nothing is missing where English says something, and nothing is made of what is not there', () => {
    expect(wrongIn(said(), (text, at, row) => text === null || isBroken(text, language) || (text === '') !== (english[at]?.[row] === ''))).toEqual([]);
  });

  test('no sentence is left in English, but for words that are its own, too', () => {
    const left = sentences.map((sentence, at) => ({ where: named(sentence), text: leftAsInEnglish(said()[at] ?? [], english[at] ?? []) }));
    const known = Object.keys(ALIKE[language]);
    expect(left.filter(({ text }) => text !== null && !known.includes(text))).toEqual([]);
    expect(known.filter((word) => !left.some(({ text }) => text === word))).toEqual([]);
  });

  test('no sentence holds small words of English', () => {
    const isEnglish = (text: string): boolean => (text.match(ENGLISH) ?? []).some((word) => !SHARED[language].includes(word.toLowerCase()));
    expect(wrongIn(said(), (text) => text !== null && isEnglish(text.replace(NAMES, '')))).toEqual([]);
  });

  test('a word to say is the one that is heard: with another language heard, no quoted word of this one is left', async () => {
    const { words, signs, question } = await HEARD[language].written();
    const taught = [...Object.values(words).map(({ say }) => say), signs.plus[0], signs.minus[0], question.openings[0]];
    const before = besideAnother.get(language) ?? [];
    expect(said().filter((texts, at) => texts.some((text, row) => text !== before[at]?.[row])).length).toBeGreaterThan(10);
    expect(wrongIn(before, (text) => quotedIn(text ?? '').some((quoted) => taught.some((word) => begins(quoted, word))))).toEqual([]);
  });

  test('the microphone mark has room for twelve letters, or six of full width', () => {
    const inMark = ({ area, at }: Sentence): boolean => (area === 'voice' && /^mark(?!ed)/.test(at)) || (area === 'first' && at === 'mark.word');
    const marks = sentences.flatMap((sentence, at) => (inMark(sentence) ? [said()[at]?.[0] ?? ''] : []));
    expect(marks.length).toBeGreaterThan(25);
    expect(marks.filter((mark) => widthOf(mark) > 12)).toEqual([]);
  });
});

const quotedIn = (text: string): string[] => [...text.matchAll(QUOTED)].map(([, quoted = '']) => quoted);
const begins = (text: string, word: string): boolean => `${text.toLowerCase()} `.startsWith(`${word.toLowerCase()} `);
/** In Latin letters. */
const widthOf = (text: string): number => [...text].reduce((width, letter) => width + (/[\u1100-\u11ff\u2e80-\u9fff\uff00-\uff60]/.test(letter) ? 2 : 1), 0);

test('a quoted word is found in every kind of quotation marks', () => {
  for (const text of ['Say “solid”.', 'Sage „solid“.', 'Dites « solid ».', '「solid」と言う', 'Di «solid plus».']) {
    expect(quotedIn(text).some((quoted) => begins(quoted, 'solid'))).toBe(true);
  }
  expect([widthOf('stabil'), widthOf('音声オフ')]).toEqual([6, 8]);
});
