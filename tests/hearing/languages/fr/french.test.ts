// Contract of French as it is heard: every word, value and length that is said is taken as what it stands for, whatever way it is written;
// the words are far apart; talk is left alone.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FRENCH } from '../../../../src/hearing/languages/fr/french.ts';
import { sayCorrection } from '../../../../src/hearing/languages/fr/sayCorrection.ts';
import { askedWords } from '../../../../src/logbook/search/asking.ts';
import { WORDS, type Word } from '../../../../src/sweep/inputs.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import { correctionsIn } from '../../../../src/voice/corrections.ts';
import { strictMatcherFor } from '../../../../src/voice/matching.ts';
import { nameAfterNextIn } from '../../../../src/voice/nextLens.ts';
import { matcherFor } from '../../../../src/voice/phonetic/match.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { inPhase } from '../../../sweep/staged.ts';
import { beginnings, notTaken, numbersOf, pairsApart, phrasesOf, taughtWords } from './heardContract.ts';
import { LOOKUP, NO_LOOKUP, REJECT, TALK, VALUES, WANT } from './transcripts.ts';

const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'turning', 'finished'] as const;
const RESULT = ['entered', 'next', 'undo', 'repeat', 'far view', 'help'] as const satisfies readonly Word[];
const WALK = ['next', 'back', 'repeat'] as const satisfies readonly Word[];
const STATES: readonly (readonly Word[])[] = [...PHASES.map((phase) => understood(inPhase(phase)).words), RESULT, WALK];
const DIALLING = understood(inPhase('dialling')).words;
const { match, questionIn } = matcherFor(FRENCH);
const { wordsOf, correctionIn } = correctionsIn(FRENCH);
const heard = (text: string, allowed: readonly Word[] = DIALLING, largest = 50) => match([{ text }], allowed, true, largest);
const { say, also } = FRENCH.numbers;
const asked = (text: string): string | null => {
  const question = questionIn(text);
  const said = question === null ? null : askedWords(FRENCH, question);
  return said && said.filter((word) => !FRENCH.question.fillers.includes(word)).join(' ');
};

describe('the words of French', () => {
  test.each([...PHASES, 'result', 'walk'])('are taken in %s as what they stand for, and none begins another', (name) => {
    const allowed = STATES[[...PHASES, 'result', 'walk'].indexOf(name)] ?? [];
    expect(notTaken(FRENCH, allowed)).toEqual([]);
    expect(beginnings(FRENCH, allowed)).toEqual([]);
  });

  test('are taken before the person has stopped, as they are taught', () => {
    const strictly = strictMatcherFor(FRENCH);
    for (const word of WORDS) {
      if (word === 'set') continue;
      const { say: taught } = FRENCH.words[word];
      expect({ taught, ...strictly([{ text: `${taught}.` }], [word], false) }).toMatchObject({ taught, is: 'taken', words: taught });
    }
  });

  test('are taken in all phases together, or asked about', () => {
    for (const { said } of phrasesOf(FRENCH, WORDS)) expect({ said, is: heard(said, WORDS).is }).not.toEqual({ said, is: 'ignored' });
  });

  test('say the same with courtesy and thinking around them', () => {
    const phrases = phrasesOf(FRENCH, DIALLING);
    const before = fc.constantFrom('', 'euh ', 'alors, ', 's’il te plaît ', 'bon, euh ', 'tu peux ', 'est-ce que vous pouvez ', 'D’accord, ');
    const after = fc.constantFrom('', ' s’il te plaît', ', s’il vous plaît.', ' merci', ', merci beaucoup', ' euh', ' hein');
    fc.assert(
      fc.property(fc.constantFrom(...phrases), before, after, ({ said, word }, first, last) => {
        expect(heard(`${first}${said}${last}`)).toMatchObject({ is: 'taken', words: FRENCH.words[word].say });
      }),
      { numRuns: 300 },
    );
  });

  test('are further apart than those of English are, which begin at 0.35, and so are signs and the word for look-up', () => {
    const words = taughtWords(FRENCH);
    const signs = [FRENCH.signs.plus[0], FRENCH.signs.minus[0]];
    const opening = FRENCH.question.openings[0];
    expect(pairsApart(FRENCH, words, words)[0]?.apart).toBeGreaterThan(0.36);
    expect(pairsApart(FRENCH, [...words, ...numbersOf(FRENCH, 20)], [...signs, opening])[0]?.apart).toBeGreaterThan(0.4);
    expect(pairsApart(FRENCH, signs, [...signs, opening])[0]?.apart).toBeGreaterThan(0.9);
  });

  test('are never taken for a number, nor a number for one of them', () => {
    for (const said of numbersOf(FRENCH, 100)) {
      for (const allowed of STATES) expect({ said, is: heard(said, allowed).is }).not.toEqual({ said, is: 'taken' });
    }
    const numbers = numbersOf(FRENCH, 20);
    // "Droite" and "trois", "fixe" and "six": a number needs a sign, so they never stand in one place.
    const apart = pairsApart(FRENCH, taughtWords(FRENCH), numbers).filter(({ one, other }) => !['droite trois', 'fixe six'].includes(`${one} ${other}`));
    expect(apart[0]?.apart).toBeGreaterThan(0.34);
  });
});

describe('the corrections of French', () => {
  const FORMS: readonly ((value: number) => string)[] = [
    (value) => `valeur ${sayCorrection(value)}`,
    (value) => `Valeur ${value > 0 ? '+' : value < 0 ? '−' : ''}${Math.abs(value)}.`,
    (value) => `mets à ${sayCorrection(value)} s’il te plaît`,
    (value) => `euh, valeur ${sayCorrection(value)}, merci`,
    (value) => `valeur ${value === 0 ? 'zero' : `${value > 0 ? 'positif' : 'négatif'} ${Math.abs(value)}`}`,
    (value) =>
      `valeur ${value === 0 ? 'zéro' : `${value > 0 ? 'plus' : 'moins'} ${[...String(Math.abs(value))].map((digit) => say(Number(digit))).join(' ')}`}`,
  ];

  test('are heard from −50 to 50 in every way that they are said and written', () => {
    for (let value = -50; value <= 50; value++) {
      expect(correctionIn(wordsOf(sayCorrection(value)))).toBe(value);
      for (const form of FORMS) expect({ text: form(value), ...heard(form(value)) }).toMatchObject({ is: 'taken', input: { told: 'set', value } });
    }
  });

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

  test('are never taken without their sign, nor with a part that is no whole step', () => {
    for (let value = 1; value <= 50; value++) expect(heard(`valeur ${say(value)}`)).toMatchObject({ is: 'unclear', best: null });
    for (const text of ['plus un virgule cinq', 'plus 1,5', 'moins quatre et demi']) expect({ text, is: heard(text).is }).not.toMatchObject({ is: 'taken' });
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
  test('finds every length from 8 to 800 in every way that it is said and written', () => {
    for (let length = 8; length <= 800; length++) {
      const said = [say(length), ...also(length), `${length}`, `le ${length} mm`, `${length} millimètres s’il te plaît`];
      for (const text of said.map((one) => `recherche ${one}`)) expect({ text, length: asked(text) }).toEqual({ text, length: String(length) });
    }
  });

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

  test('names the next lens', () => {
    const name = nameAfterNextIn(FRENCH.naming);
    expect([name('objectif suivant Corvid 85'), name('Suivant Orrin 50'), name('suivant'), name('objectif suivant')]).toEqual([
      'Corvid 85',
      'Orrin 50',
      null,
      null,
    ]);
  });
});

describe('what a recogniser may write', () => {
  const told = WANT.flatMap(({ word, heard: text }) =>
    STATES.filter((allowed) => allowed.includes(word)).map((allowed) => ({ text, allowed, meant: FRENCH.words[word].say })),
  );
  const values = VALUES.flatMap(({ value, heard: text }) =>
    STATES.filter((allowed) => allowed.includes('set')).map((allowed) => ({
      text,
      allowed,
      meant: `valeur ${value > 0 ? '+' : value < 0 ? '\u2212' : ''}${Math.abs(value)}`,
    })),
  );

  test('is never taken for something else, and 97 of a hundred are right or asked back', () => {
    const answers = [...told, ...values].map(({ text, allowed, meant }) => ({ text, meant, answer: heard(text, allowed, 20) }));
    expect(
      answers.flatMap(({ text, meant, answer }) => (answer.is === 'taken' && answer.words !== meant ? [{ text, meant, taken: answer.words }] : [])),
    ).toEqual([]);
    expect(answers.filter(({ answer }) => answer.is !== 'ignored').length / answers.length).toBeGreaterThan(0.97);
    expect(answers.filter(({ answer }) => answer.is === 'taken').length / answers.length).toBeGreaterThan(0.9);
  });

  test('of more talk two in a hundred are acted on at most', () => {
    const answers = TALK.flatMap((text) => STATES.map((allowed) => heard(text, allowed, 20).is));
    expect(answers.filter((is) => is === 'taken').length / answers.length).toBeLessThan(0.02);
    expect(answers.filter((is) => is === 'unclear').length / answers.length).toBeLessThan(0.03);
    expect(TALK.filter((text) => questionIn(text) !== null)).toEqual([]);
  });

  test('of people who talk to each other nothing is acted on', () => {
    for (const text of REJECT) for (const allowed of [...STATES, WORDS]) expect({ text, is: heard(text, allowed, 20).is }).not.toEqual({ text, is: 'taken' });
    for (const text of REJECT) expect({ text, question: questionIn(text) }).toEqual({ text, question: null });
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
