// Contract of the words of Spanish: taken where they are said, in whatever form a recogniser writes them, and nowhere in daily talk.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../../src/hearing/languages/en/english.ts';
import { SPANISH } from '../../../../src/hearing/languages/es/spanish.ts';
import { WORDS, type Word } from '../../../../src/sweep/inputs.ts';
import { strictMatcherFor } from '../../../../src/voice/matching.ts';
import { heardIn, MOMENTS } from './heardIn.ts';
import { TALK } from './talk.ts';
import { TRANSCRIPTS } from './transcripts.ts';

const { heard } = heardIn(SPANISH);
const strictly = strictMatcherFor(SPANISH);
const said = (word: Word): readonly string[] => (word === 'set' ? [] : [SPANISH.words[word].say, ...SPANISH.words[word].also]);
const momentOf = (word: Word): readonly Word[] => MOMENTS.find(([, words]) => words.includes(word))?.[1] ?? [];
const [HOLDING, DIALLING] = [momentOf('solid'), momentOf('set')];

test.each(MOMENTS)('in %s every phrase is taken as its word, also in capitals, with marks and without accents', (_, allowed) => {
  for (const word of allowed) {
    for (const phrase of said(word)) {
      for (const written of [phrase, `¡${phrase.toUpperCase()}!`, phrase.normalize('NFD').replace(/\p{M}/gu, '')]) {
        expect({ written, ...heard(written, allowed) }).toMatchObject({ written, is: 'taken', words: SPANISH.words[word].say });
      }
    }
  }
});

test.each(MOMENTS)('in %s no phrase begins the phrase of another word, so that one may be taken early', (_, allowed) => {
  for (const one of allowed) {
    for (const other of allowed.filter((word) => word !== one)) {
      const clashes = said(one).filter((phrase) => said(other).some((longer) => `${longer} `.startsWith(`${phrase} `)));
      expect({ one, other, clashes }).toEqual({ one, other, clashes: [] });
    }
  }
});

test('every phrase is taken where it is spelt as taught', () => {
  for (const word of WORDS) {
    for (const phrase of said(word)) expect(strictly([{ text: `${phrase}.` }], [word], true)).toMatchObject({ is: 'taken', words: SPANISH.words[word].say });
  }
});

test('a light and an arrow in one breath are one verdict, in either order', () => {
  const verdict = { light: 'flicker', arrows: 'left' };
  for (const text of ['parpadea izquierda', 'izquierda parpadea', 'parpadeo, flecha izquierda']) {
    expect({ text, ...heard(text, HOLDING) }).toMatchObject({ text, is: 'taken', input: { told: 'verdict', verdict } });
  }
});

test('courtesy and thinking around any phrase change nothing about what is told', () => {
  const phrases = DIALLING.flatMap((word) => said(word).map((phrase) => ({ phrase, word })));
  const before = fc.constantFrom('', 'eh, ', 'vale, ', 'pues ', 'a ver, ', 'por favor, ', 'bueno, pues ', 'creo que ', '¿puedes ', 'me gustaría ');
  const after = fc.constantFrom('', ' por favor', ', gracias', ' eh', ', vale, gracias', ' ahora', ' otra vez');
  fc.assert(
    fc.property(fc.constantFrom(...phrases), before, after, ({ phrase, word }, first, last) => {
      const text = `${first}${phrase}${last}`;
      expect({ text, ...heard(text, DIALLING) }).toMatchObject({ text, is: 'taken', words: SPANISH.words[word].say });
    }),
    { numRuns: 1500 },
  );
});

describe('what a recogniser writes', () => {
  const all = Object.entries(TRANSCRIPTS).flatMap(([word, texts]) => texts.split(' | ').map((text) => ({ word: word as Word, text })));
  const answered = all.flatMap(({ word, text }) =>
    MOMENTS.filter(([, allowed]) => allowed.includes(word)).map(([moment, allowed]) => ({ moment, word, text, answer: heard(text, allowed) })),
  );

  test('is never taken for another word', () => {
    const wrong = answered.filter(({ word, answer }) => answer.is === 'taken' && answer.words !== SPANISH.words[word].say);
    expect(wrong).toEqual([]);
  });

  test('is understood, or asked about as what it was, in 98 of 100 at least', () => {
    const missed = answered.filter(
      ({ word, answer }) => answer.is === 'ignored' || (answer.is === 'unclear' && answer.best?.words !== SPANISH.words[word].say),
    );
    expect(all.length).toBeGreaterThan(250);
    expect({ missed: missed.map(({ moment, text }) => `${moment}: ${text}`), many: missed.length <= 0.02 * answered.length }).toMatchObject({ many: true });
  });

  test('is taken at once in three of four', () => {
    expect(answered.filter(({ answer }) => answer.is === 'taken').length / answered.length).toBeGreaterThan(0.75);
  });
});

describe('what is not meant for the panel', () => {
  test.each(MOMENTS)('is not acted on in %s', (_, allowed) => {
    const actedOn = TALK.filter((text) => heard(text, allowed).is === 'taken');
    expect(actedOn).toEqual([]);
  });

  test('is asked about in three of twenty at most, though a third of it holds a taught word', () => {
    for (const [moment, allowed] of MOMENTS) {
      const asked = TALK.filter((text) => heard(text, allowed).is === 'unclear');
      expect({ moment, asked, few: asked.length <= 0.15 * TALK.length }).toMatchObject({ few: true });
    }
  });

  test('is a word with "no" before it, which turns it round', () => {
    for (const [, allowed] of MOMENTS) {
      for (const word of allowed.filter((one) => one !== 'same' && one !== 'nothing')) {
        for (const phrase of said(word)) {
          for (const text of [`no ${phrase}`, `no está ${phrase}`, `todavía no ${phrase}`]) {
            const answer = heard(text, allowed);
            expect({ text, taken: answer.is === 'taken' && answer.words === SPANISH.words[word].say }).toEqual({ text, taken: false });
          }
        }
      }
    }
  });

  test('is English, where Spanish is heard', () => {
    for (const word of WORDS) {
      for (const text of [ENGLISH.words[word].say, ...ENGLISH.words[word].also]) {
        const answer = heard(text, WORDS);
        expect({ text, taken: answer.is === 'taken' && answer.words !== SPANISH.words[word].say }).toEqual({ text, taken: false });
      }
    }
  });
});

test('what asks back is what may turn the reading round: half an arrow, an arrow in a statement, a statement of daily talk', () => {
  for (const text of ['a la derecha', 'derecho', 'pareja', 'torcida', 'es tarde', 'me ayudas']) {
    expect({ text, is: heard(text, HOLDING).is }).toEqual({ text, is: 'unclear' });
  }
});

test.each([
  ['las dos iguales', 'parejas'],
  ['ambas flechas iguales', 'parejas'],
  ['las dos desiguales', 'torcidas'],
  ['son desiguales', 'torcidas'],
])('"%s" is %s', (text, words) => {
  expect(heard(text, HOLDING)).toMatchObject({ is: 'taken', words });
});

test.each(['iguales', 'son iguales', 'de iguales', 'dos iguales'])(
  '"%s" may be "desiguales" that lost its beginning, and is never taken for even arrows',
  (text) => {
    expect(heard(text, HOLDING).is).not.toBe('taken');
  },
);
