// Contract of the words that are said in German: each is taken for itself wherever it counts, whatever is said around it, and no
// other sounds like it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { GERMAN } from '../../../../src/hearing/languages/de/german.ts';
import { ENGLISH } from '../../../../src/hearing/languages/en/english.ts';
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import { WORDS, type Word } from '../../../../src/sweep/inputs.ts';
import { strictMatcherFor } from '../../../../src/voice/matching.ts';
import { hearingIn, isTold, MOMENTS, nearestPair, phrasesOf } from './heardIn.ts';

const hearing = hearingIn(GERMAN);
const { heard } = hearing;
const strictly = strictMatcherFor(GERMAN);
const say = (word: Word): string => GERMAN.words[word].say;
const moments = Object.entries(MOMENTS);

describe.each(moments)('in %s', (_, allowed) => {
  test('every phrase is taken as its word, as it is spelt and by its sound', () => {
    for (const word of allowed.filter(isTold)) {
      for (const said of phrasesOf(GERMAN, word)) {
        expect({ said, ...heard(said, allowed) }).toMatchObject({ is: 'taken', words: say(word) });
        expect({ said, ...strictly([{ text: said }], allowed, true) }).toMatchObject({ is: 'taken', words: say(word) });
      }
    }
  });

  test('no phrase begins the phrase of another word, so that one may be taken early', () => {
    for (const one of allowed) {
      for (const other of allowed.filter((word) => word !== one)) {
        const clashes = phrasesOf(GERMAN, one).filter((said) => phrasesOf(GERMAN, other).some((longer) => `${longer} `.startsWith(`${said} `)));
        expect({ one, other, clashes }).toEqual({ one, other, clashes: [] });
      }
    }
  });

  test('what people say around a word changes nothing about what is told', () => {
    const phrases = allowed.filter(isTold).flatMap((word) => phrasesOf(GERMAN, word).map((said) => ({ word, said })));
    const before = fc.constantFrom(
      '',
      'bitte ',
      'okay, ',
      'äh ',
      'ähm, ja, ',
      'so, ',
      'kannst du ',
      'könnten Sie bitte ',
      'also ',
      'und dann ',
      'ich würde gern ',
    );
    const after = fc.constantFrom('', ' bitte', ' danke', ' bitte mal', ', vielen Dank', ' äh', ' okay', ' ja');
    fc.assert(
      fc.property(fc.constantFrom(...phrases), before, after, ({ word, said }, first, last) => {
        expect({ said, first, last, ...heard(`${first}${said}${last}`, allowed) }).toMatchObject({ is: 'taken', words: say(word) });
      }),
      { numRuns: 300 },
    );
  });
});

describe('words that are taught', () => {
  /** Zero to twelve: what is longer is made of these. */
  const spokenWith = ({ numbers, signs, question }: HeardLanguage): string[] => [
    ...Array.from({ length: 13 }, (__, number) => numbers.say(number)),
    signs.plus[0],
    signs.minus[0],
    question.openings[0],
  ];
  const taughtIn = ({ words }: HeardLanguage, which: readonly Word[]): string[] => which.map((word) => words[word].say);

  test('of one moment are at least as far apart in sound as in English', () => {
    for (const [moment, allowed] of moments) {
      const own = nearestPair(hearing, taughtIn(GERMAN, allowed));
      const english = nearestPair(hearingIn(ENGLISH), taughtIn(ENGLISH, allowed));
      expect({ moment, ...own, enough: own.apart >= Math.min(0.5, english.apart) }).toMatchObject({ enough: true });
    }
  });

  test('are all far apart, also from signs, numbers and the word for the logbook', () => {
    const words = taughtIn(GERMAN, WORDS);
    const pairs = words.flatMap((word) => [...words, ...spokenWith(GERMAN)].map((other) => ({ word, other, apart: hearing.apart(word, other) })));
    expect(pairs.filter(({ word, other, apart }) => word !== other && apart < 0.41)).toEqual([]);
    // English: "accept" and "set" are at 0.35.
    expect(nearestPair(hearingIn(ENGLISH), [...taughtIn(ENGLISH, WORDS), ...spokenWith(ENGLISH)]).apart).toBeLessThan(0.36);
  });

  test.each([
    ['left', 'right', 0.5],
    ['balanced', 'lopsided', 0.6],
    ['same', 'shifted', 0.6],
    ['solid', 'delayed', 0.6],
    ['accept', 'go on', 0.6],
  ] as const)('%s and %s, which turn a reading round, are further', (one, other, least) => {
    expect(hearing.apart(say(one), say(other))).toBeGreaterThan(least);
  });

  test('plus and minus are further', () => {
    expect(hearing.apart('plus', 'minus')).toBeGreaterThan(0.6);
  });
});

test.each([
  ['Stabile.', 'solid'],
  ['es war ganz stabil', 'solid'],
  ['ja, das ist stabil', 'solid'],
  ['zögerte', 'delayed'],
  ['das Licht kam verzögert', 'delayed'],
  ['etwas verzögert', 'delayed'],
  ['spät', 'delayed'],
  ['flacker', 'flicker'],
  ['es hat geflackert', 'flicker'],
  ['da war nichts', 'nothing'],
  ['mit ich', 'balanced'],
  ['beide sind gleich', 'balanced'],
  ['gedruckt', 'holding'],
  ['gerückt', 'holding'],
  ['jetzt gedrückt', 'holding'],
  ['an nehmen', 'accept'],
  ['aus lassen', 'skip'],
  ['diesen bitte überspringen', 'skip'],
  ['fort setzen', 'resume'],
  ['das selbe', 'same'],
  ['es hat sich verschoben', 'shifted'],
  ['das ist eingestellt', 'entered'],
  ['nächsten', 'next'],
  ['fern Sicht', 'far view'],
] as const)('"%s" is taken for %s, or asked about', (text, word) => {
  for (const [, allowed] of moments.filter(([, words]) => words.includes(word))) {
    const answer = heard(text, allowed);
    expect({ text, is: answer.is, words: answer.is === 'taken' ? answer.words : answer.is === 'unclear' && answer.best?.words }).toMatchObject({
      words: say(word),
    });
  }
});

test.each([
  ['flackert links', 'flicker', 'left'],
  ['rechts verzögert', 'late', 'right'],
  ['stabil und beide gleich', 'steady', 'balanced'],
] as const)('"%s" is one verdict', (text, light, arrows) => {
  expect(heard(text, MOMENTS['holding'])).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict: { light } } });
  expect(heard(text, MOMENTS['holding'])).toMatchObject({ input: { verdict: { arrows } } });
});
