// What is found, known and understood of what is typed and said, kept over seeded words of every length.
import { expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { FRENCH_WRITTEN } from '../../../src/hearing/languages/fr/vocabulary.ts';
import { GERMAN_WRITTEN } from '../../../src/hearing/languages/de/vocabulary.ts';
import { JAPANESE_WRITTEN } from '../../../src/hearing/languages/ja/vocabulary.ts';
import { SPANISH_WRITTEN } from '../../../src/hearing/languages/es/vocabulary.ts';
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { askedWords, carriesNothing, isQuestion } from '../../../src/logbook/search/asking.ts';
import { finderOf, lookUpSpoken, lookUpTyped } from '../../../src/logbook/search/finder.ts';
import { find, indexOf, isKnown } from '../../../src/logbook/search/searchIndex.ts';
import { couldBegin, lettersOf, slipsForgiven, slipsToBegin } from '../../../src/logbook/search/typo.ts';
import { findableWords, fold, wordsIn } from '../../../src/logbook/search/words.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import type { Vocabulary } from '../../../src/hearing/languages/heardLanguage.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { libraryWith, T0 } from '../libraryWith.ts';

const LANGUAGES = [ENGLISH_WRITTEN, GERMAN_WRITTEN, FRENCH_WRITTEN, SPANISH_WRITTEN, JAPANESE_WRITTEN];

function seededWords(seed: number, count: number, letters: string): string[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => Array.from({ length: Math.floor(random() * 10) }, () => letters[Math.floor(random() * letters.length)]).join(''));
}

test('slips between seeded words', () => {
  const [typed, meant] = [seededWords(3, 400, 'abc'), seededWords(4, 400, 'abc')];
  const most = [0, 1, 2, 3].map((slips) => typed.map((word, at) => slipsToBegin(word, meant[at] ?? '', slips) ?? 'x').join(''));
  expect(most).toMatchSnapshot('slips');
  const letters = seededWords(5, 60, 'abcdefgh0123');
  expect(
    [0, 1, 2].map((slips) => letters.map((word, at) => Number(couldBegin(lettersOf(word), lettersOf(letters[59 - at] ?? ''), slips))).join('')),
  ).toMatchSnapshot('could begin');
  expect(oneLine(letters.slice(0, 20).map(lettersOf))).toMatchSnapshot('letters');
  expect([0, 1, 3, 4, 5, 7, 8, 9, 30].map(slipsForgiven).join('')).toBe('000111222');
});

test('texts cut into words, and the words under which they are found', () => {
  const texts = [
    '',
    'Örebro 135',
    '24\u00ad-70 f/2,8',
    'F / 1.8',
    'f1.8 85mm 4.25m 1.4x',
    '...85. .5',
    'ガ か\u3099',
    'a,b 1,5',
    'mm f m',
    'KX-20931',
    '85mmx',
    'ƒ 12',
    'Ⅷ ８５',
  ];
  expect(texts.map((text) => oneLine([fold(text), wordsIn(text).join('|'), findableWords(text).join('|')]))).toMatchSnapshot();
});

test('an index, what it finds, and in which order', () => {
  const documents = [
    ['Velde M1', 'Orrin 85 f/1.8', '85mm', '4.25m'],
    ['Velde M2', 'Orrin 85 f/1.8', '85mm', '4.25m', 'KX-20931'],
    ['Velde M1', 'Orrin 850', '850mm'],
    ['Velde M1', 'Tessel zoom', '35mm'],
    [],
    ['85', '85'],
  ];
  const index = indexOf(documents);
  expect(index.words.map(({ text, letters, documents: held }) => `${text} ${letters} ${held.join(',')}`)).toMatchSnapshot('words');
  const typed = [
    '',
    'v',
    'velde',
    'veld',
    'vedle',
    'vxlde',
    'vxxde',
    'velde m1',
    'velde m1 85',
    '85',
    '8',
    '850',
    '8500',
    '0931',
    '93',
    '093',
    'kx',
    'orin',
    'orrinn',
    'tesel',
    'tesselx',
    'tesel 35',
    'tess zo',
    'sse',
    'ss',
    'el',
    'ssel velde',
    'zooom',
    'zoon',
    'zon',
    'nothing',
    'velde nothing',
    'elde',
    'orrin 85',
    '4.2',
    '4.25',
  ];
  expect(typed.map((text) => oneLine([text, find(index, wordsIn(text)), wordsIn(text).map((word) => isKnown(index, word))]))).toMatchSnapshot('found');
  const many = indexOf(seededWords(8, 80, 'abcd').map((word, at) => [word, `${at % 7}`]));
  expect(seededWords(9, 60, 'abcd').map((word) => oneLine([word, find(many, [word]), find(many, [word, '3'])]))).toMatchSnapshot('many');
});

const library = libraryWith({
  bodies: [
    { id: 'old', name: 'Velde M1, the old body', serial: '004711', model: 'Velde M1' },
    { id: 'new', name: 'Velde M2' },
    { id: 'away', name: 'Velde M0', retired: 5 },
  ],
  lenses: [
    { id: '85', name: 'Orrin 85 f/1.8', serial: 'KX-20931' },
    { id: 'zoom', name: 'Tessel 24–70 f/2.8', model: 'TZ 70' },
  ],
  situations: [
    { id: 'gone', body: 'away', lens: '85' },
    { id: '85 old', body: 'old', lens: '85' },
    { id: '85 new', body: 'new', lens: '85' },
    { id: 'wide', body: 'new', lens: 'zoom', focalLength: 24, distance: 1200 },
    { id: 'tele', body: 'new', lens: 'zoom', focalLength: 70, distance: 3500 },
  ],
});

test('what is looked up, typed and said', () => {
  const shelf = shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
  const finders = [ENGLISH_WRITTEN].map((language) => finderOf(language, library.kit, shelf));
  const asked = [
    '',
    '85',
    'old',
    '4711',
    'tz',
    '1.2m',
    '24 70',
    'velde',
    'look up the eighty-five on the old body',
    'the seventy on something',
    'M two',
    'm 2',
    'the',
    'velde nonsense 85',
    'eighty-five new tessel',
  ];
  for (const [at, finder] of finders.entries())
    expect(
      asked.map((text) =>
        oneLine([text, lookUpTyped(finder, text).map(({ situation }) => situation?.id), lookUpSpoken(finder, text).map(({ situation }) => situation?.id)]),
      ),
    ).toMatchSnapshot(`finder ${String(at)}`);
});

test('names are found as they sound, too, where they can be written in more ways than one', () => {
  const shelf = shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
  const sounding = finderOf({ ...ENGLISH_WRITTEN, parted: (text) => text.replace('Velde', 'Vel de') }, library.kit, shelf);
  expect(['vel', 'vel de', 'velde', 'old'].map((text) => lookUpTyped(sounding, text).length)).toEqual([5, 5, 5, 1]);
  expect(sounding.shelf.map(({ situation }) => situation?.id).at(-1)).toBe('gone');
});

test('questions, and the words that say nothing in them', () => {
  const phrases = ['look up the eighty-five', 'velde m one', "what's on the old body", 'the', '', 'one three five'];
  expect(phrases.map((phrase) => askedWords(ENGLISH_WRITTEN, phrase).join(' '))).toMatchSnapshot('asked');
  const asked = (language: Vocabulary) =>
    [...phrases, ...language.question.openings].map((phrase) => [isQuestion(language, phrase), carriesNothing(language, phrase)].map(Number).join(''));
  expect(LANGUAGES.map((language) => asked(language).join(' '))).toMatchSnapshot('questions');
});
