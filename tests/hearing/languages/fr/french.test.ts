// Contract of French as it is heard, where it differs from other languages: what a recogniser may write for words, values and questions.
import { describe, expect, test } from 'vitest';
import { FRENCH } from '../../../../src/hearing/languages/fr/french.ts';
import { sayCorrection } from '../../../../src/hearing/languages/fr/sayCorrection.ts';
import { askedWords } from '../../../../src/logbook/search/asking.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { hearingIn, shortly } from '../heard.ts';
import { MOMENTS, wordsAt } from '../moments.ts';
import { LOOKUP, NO_LOOKUP, TALK_LIKE_WORDS, VALUES, WANT } from './transcripts.ts';

const DIALLING = wordsAt('dialling');
const { heard, questionIn } = hearingIn(FRENCH);
const asked = (text: string): string | null => {
  const question = questionIn(text);
  const said = question === null ? null : askedWords(FRENCH, question);
  return said && said.filter((word) => !FRENCH.question.fillers.includes(word)).join(' ');
};

test('a number by itself is never taken for a word', () => {
  const numbers = Array.from({ length: 101 }, (_, whole) => FRENCH.numbers.say(whole));
  expect(numbers.filter((said, at) => heard(said, MOMENTS[at % MOMENTS.length]?.words).is === 'taken')).toEqual([]);
  // "Droite" and "trois" are near.
  expect(MOMENTS.filter(({ words }) => ['trois', 'six'].some((said) => heard(said, words).is === 'taken'))).toEqual([]);
});

describe('the corrections of French', () => {
  test('are said with their sign always, and half-steps as halves', () => {
    expect([6, -12, 0, 4.5, -0.5, -21, 120].map(sayCorrection)).toEqual([
      'plus six',
      'moins douze',
      'zéro',
      'plus quatre et demi',
      'moins un demi',
      'moins vingt et un',
      'plus cent vingt',
    ]);
  });

  test('are never taken with a part that is no whole step', () => {
    for (const text of ['plus un virgule cinq', 'plus 1,5', 'moins quatre et demi'])
      expect({ text, is: heard(text, DIALLING, 50).is }).not.toMatchObject({ is: 'taken' });
  });

  test.each([
    ['valeur plus trente', 13],
    ['moins quarante', -14],
    ['plus un hein', 1],
  ])('"%s" may be %i and is asked about', (text, value) => {
    expect(heard(text, DIALLING, 20)).toMatchObject({ is: 'unclear', best: { input: { value } } });
  });
});

describe('a question to the logbook in French', () => {
  test.each([
    ['soixante et onze', '71'],
    ['septante et un', '71'],
    ['quatre-vingt-dix', '90'],
    ['nonante-cinq', '95'],
    ['mille deux cents', '1200'],
    ['100-400', '100 400'],
    ['150-600', '150 600'],
    ['28-135', '28 135'],
    ['18-105', '18 105'],
    ['un virgule huit', '1.8'],
    ['deux quatre zéro sept', '2407'],
    ['cinq zéro', '50'],
    ['f/1,8', 'f1.8'],
    ['le cinquante sur le M un', '50 m1'],
  ])('"%s" is read as %s', (said, query) => {
    expect(asked(`recherche ${said}`)).toBe(query);
  });

  test.each(LOOKUP.map(({ heard: text, query }) => [text, query]))('"%s" asks for %s', (text, query) => {
    expect(asked(text)).toBe(query);
  });

  test.each(NO_LOOKUP)('"%s" asks nothing', (text) => {
    expect(questionIn(text)).toBeNull();
  });
});

describe('what a recogniser may write', () => {
  const told = WANT.flatMap(({ word, heard: text }) =>
    MOMENTS.filter(({ words }) => words.includes(word)).map(({ words }) => ({ text, allowed: words, meant: FRENCH.words[word].say })),
  );
  const values = VALUES.map(({ value, heard: text }) => ({
    text,
    allowed: DIALLING,
    meant: `${FRENCH.words.set.say} ${value > 0 ? '+' : value < 0 ? '\u2212' : ''}${Math.abs(value)}`,
  }));

  test('is never taken for something else, and 97 of a hundred are right or asked back', () => {
    const answers = [...told, ...values].map(({ text, allowed, meant }) => ({ text, meant, answer: heard(text, allowed) }));
    const taken = answers.filter(({ answer }) => answer.is === 'taken');
    expect(taken.filter(({ answer, meant }) => shortly(answer) !== meant)).toEqual([]);
    expect(answers.filter(({ answer }) => answer.is !== 'ignored').length / answers.length).toBeGreaterThan(0.97);
    expect(taken.length / answers.length).toBeGreaterThan(0.9);
  });

  test('of talk that holds taught words two in a hundred are acted on at most', () => {
    const answers = MOMENTS.flatMap(({ words }) => TALK_LIKE_WORDS.map((text) => heard(text, words).is));
    expect(answers.filter((is) => is === 'taken').length / answers.length).toBeLessThan(0.02);
    expect(answers.filter((is) => is === 'unclear').length / answers.length).toBeLessThan(0.03);
    expect(TALK_LIKE_WORDS.filter((text) => questionIn(text) !== null)).toEqual([]);
  });
});

// Held against espeak-ng 1.51, a general-purpose synthesiser.
test.each([
  ['montagne', 'mcntAn$'],
  ['bouteille', 'bvtX$'],
  ['poisson', 'p#asCn'],
  ['maison', 'mx0Cn'],
  ['personne', 'px@sCn'],
  ['question', '1xst$Cn'],
  ['vingt', '9An'],
])('%s sounds as its letters say', (word, sounds) => {
  expect(pronouncer(FRENCH.pronunciation)(word)).toBe(sounds);
});
