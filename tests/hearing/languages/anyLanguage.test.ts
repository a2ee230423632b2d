// Contract of the matcher: it knows no language but the one it is given. What is said in an invented one is taken, and
// English, which that language has no word of, is not.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { finderOf, lookUpSpoken } from '../../../src/logbook/search/finder.ts';
import { numberWordsIn } from '../../../src/logbook/search/numberWords.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import { inputOf } from '../../../src/sweep/meaning.ts';
import { understood } from '../../../src/sweep/understood.ts';
import { strictMatcherFor } from '../../../src/voice/matching.ts';
import { asName, nameAfterNextIn } from '../../../src/voice/nextLens.ts';
import { spelledQuestions, wholeQuestion } from '../../../src/voice/ownWords/spelledQuestion.ts';
import { spelledValues, type WordByWord } from '../../../src/voice/ownWords/spelledValue.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { spokenWordsFor } from '../../../src/voice/wordsNow.ts';
import { libraryWith, T0 } from '../../logbook/libraryWith.ts';
import { inPhase } from '../../sweep/staged.ts';
import { INVENTED } from './invented.ts';

const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'finished'] as const;
const { match, questionIn } = matcherFor(INVENTED);
const strictly = strictMatcherFor(INVENTED);
const plainWords = WORDS.filter((word): word is Exclude<Word, 'set'> => word !== 'set');
const heard = (text: string, allowed: readonly Word[] = WORDS) => match([{ text }], allowed, true);
const { say } = INVENTED.numbers;
const signed = ({ signs, numbers }: typeof INVENTED, value: number): string =>
  value === 0 ? numbers.say(0) : `${value > 0 ? signs.plus[0] : signs.minus[0]} ${numbers.say(Math.abs(value))}`;
const values = fc.integer({ min: -20, max: 20 });

describe('the words of a language', () => {
  test.each(PHASES)('are taken in %s as what they stand for', (phase) => {
    const allowed = understood(inPhase(phase)).words;
    for (const word of plainWords.filter((one) => allowed.includes(one))) {
      const { say: taught, also } = INVENTED.words[word];
      for (const said of [taught, ...also]) {
        const { heard: _, ...input } = inputOf(word, 'voice') as { heard: string | null };
        expect({ said, ...heard(said, allowed) }).toMatchObject({ is: 'taken', words: taught, input });
      }
    }
  });

  test('are taken before the person has stopped, where they cannot go on', () => {
    expect(strictly([{ text: 'Fezu.' }], ['undo'], false)).toMatchObject({ is: 'taken', words: 'fezu' });
    expect(match([{ text: 'fezu' }], ['undo'], false)).toMatchObject({ is: 'taken', words: 'fezu' });
  });

  test.each([
    ['mabbu', 'solid'],
    ['tolaara', 'delayed'],
    ['eh papako la', 'balanced'],
    ['chwany', 'holding'],
  ] as const)('"%s" is taken by its sound, or as it is known to be misheard', (text, word) => {
    expect(heard(text)).toMatchObject({ is: 'taken', words: INVENTED.words[word].say });
  });

  test('a light and its arrow in one breath are one verdict', () => {
    const verdict = { light: 'flicker', arrows: 'left' };
    for (const text of ['zizi gevo', 'gevo zizi']) {
      expect(heard(text)).toMatchObject({ is: 'taken', words: 'zizi gevo', input: { told: 'verdict', verdict } });
      expect(strictly([{ text }], WORDS, true)).toMatchObject({ is: 'taken', words: 'zizi gevo', input: { told: 'verdict', verdict } });
    }
  });

  test('are those that count, one by one, where each word is taught', () => {
    expect(spokenWordsFor(INVENTED, ['undo', 'set'], null)).toEqual(['fezu', 'kotu', 'dúpi', 'harô', ...Array.from({ length: 10 }, (_, digit) => say(digit))]);
    expect(spokenWordsFor(INVENTED, [], ['Orrin 85'])).toEqual(expect.arrayContaining(['wusha', 'Orrin 85']));
  });
});

describe('the numbers of a language', () => {
  const FORMS: readonly ((value: number) => string)[] = [
    (value) => `kotu ${signed(INVENTED, value)}`,
    (value) => `Kotu la ${signed(INVENTED, value)}.`,
    (value) => `kotu ${value > 0 ? '+' : value < 0 ? '\u2212' : ''}${Math.abs(value)}`,
    (value) =>
      `kotu ${value === 0 ? 'nul' : `${signed(INVENTED, Math.sign(value)).split(' ')[0]} ${[...String(Math.abs(value))].map((digit) => say(Number(digit))).join(' ')}`}`,
  ];

  test('are heard in every form that its way of saying them gives', () => {
    fc.assert(
      fc.property(values, fc.constantFrom(...FORMS), (value, form) => {
        expect(heard(form(value), ['set', 'undo'])).toMatchObject({ is: 'taken', input: { told: 'set', value } });
        expect(strictly([{ text: form(value).replace(' la', '') }], ['set', 'undo'], true)).toMatchObject({ is: 'taken', input: { told: 'set', value } });
      }),
    );
  });

  test('are asked about where the sign is missing, or another number sounds like it', () => {
    expect(heard('kotu joto', ['set'])).toEqual({ is: 'unclear', best: null });
    expect(match([{ text: 'kotu dúpi béle-dek' }], ['set'], true, 15)).toMatchObject({ is: 'unclear', best: { input: { value: 12 } } });
    expect(heard('dúpi gosling', ['set'])).toMatchObject({ is: 'taken', input: { value: 6 } });
  });

  test('may be told in single taught words', () => {
    const { spelt, wholeText } = spelledValues(INVENTED);
    const told = ['kotu', 'harô', 'ká', 'béle'].reduce<WordByWord | null>((before, word, at) => spelt(before, word, at), null);
    expect(heard((told && wholeText(told, 9)) ?? '', ['set'])).toMatchObject({ is: 'taken', input: { told: 'set', value: -12 } });
    expect(spelt(null, 'set', 0)).toBeNull();
    expect(spelt(null, 'minus', 0)).toBeNull();
  });
});

describe('a question to the logbook', () => {
  const library = libraryWith({
    bodies: [{ id: 'a', name: 'Velde M1' }],
    lenses: [
      { id: '85', name: 'Orrin 85' },
      { id: '135', name: 'Orrin 135' },
    ],
    situations: [
      { id: 'x', body: 'a', lens: '85' },
      { id: 'y', body: 'a', lens: '135', focalLength: 135 },
    ],
  });
  const finder = finderOf(INVENTED, library.kit, shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS));
  const found = (text: string) => lookUpSpoken(finder, text).map(({ subject }) => subject.situation);
  const { inFigures } = numberWordsIn(INVENTED.numbers);

  test('finds what is asked for in its words and numbers', () => {
    expect(questionIn('wusha voka-dek-luma')).toBe('voka dek luma');
    expect(found('wusha den orrin voka-dek-luma')).toEqual(['x']);
    expect(found('wusha ká tíri-dek-luma')).toEqual(['y']);
    expect(found('wusha voka luma')).toEqual(['x']);
  });

  test.each([
    ['hon-luma', '105'],
    ['ká nulo luma', '105'],
    ['béle-hon', '200'],
    ['joto-dek béle-hon', '70 200'],
    ['ká pika voka', '1.8'],
    ['m ká', 'm1'],
    ['eighty-five', 'eighty five'],
  ])('"%s" is written %s', (said, written) => {
    expect(inFigures(said)).toBe(written);
  });

  test('may be told in single taught words', () => {
    const { asked } = spelledQuestions(INVENTED);
    const told = ['wusha', 'voka', 'luma'].reduce<WordByWord | null>((before, word, at) => asked(before, word, at, []), null);
    expect(told && wholeQuestion(told, 9)).toBe('wusha voka luma');
    expect(asked(null, 'look up', 0, [])).toBeNull();
  });

  test('and the next lens are named in its words', () => {
    const name = nameAfterNextIn(INVENTED.naming);
    expect(asName(name('rimba corvid voka-dek') ?? '')).toBe('Corvid Voka-dek');
    expect([name('rimba gesta'), name('next lens corvid')]).toEqual([null, null]);
  });
});

describe('English, where another language is heard,', () => {
  test('is taken for nothing', () => {
    for (const word of WORDS) {
      const { say: taught, also } = ENGLISH.words[word];
      for (const said of [taught, ...also]) {
        expect({ said, is: heard(said).is }).not.toMatchObject({ is: 'taken' });
        expect({ said, is: strictly([{ text: said }], WORDS, true).is }).toEqual({ said, is: 'ignored' });
      }
    }
  });

  test('sets no value', () => {
    fc.assert(
      fc.property(values, (value) => {
        const said = `set ${value === 0 ? 'zero' : `${value > 0 ? 'plus' : 'minus'} ${ENGLISH.numbers.say(Math.abs(value))}`}`;
        expect(heard(said, ['set']).is).not.toBe('taken');
        expect(strictly([{ text: said }], ['set'], true)).toEqual({ is: 'ignored' });
      }),
    );
  });

  test('asks nothing', () => {
    expect(questionIn('look up eighty five')).toBeNull();
  });
});

test('a word is sounded by the letters and the stress of its language', () => {
  expect(pronouncer(INVENTED.pronunciation)('tolara')).toBe('twlO@o');
  expect(pronouncer(INVENTED.pronunciation)('mabbu')).toBe('mObv');
  expect(pronouncer(ENGLISH.pronunciation)('tolara')).toBe('tOlo@u');
});
