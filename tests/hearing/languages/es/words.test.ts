// Contract of the words of Spanish in whatever form a recogniser writes them, and of what turns them round or is something else.
import { describe, expect, test } from 'vitest';
import { SPANISH } from '../../../../src/hearing/languages/es/spanish.ts';
import type { Word } from '../../../../src/sweep/inputs.ts';
import { hearingIn, phrasesOf } from '../heard.ts';
import { MOMENTS, wordsAt } from '../moments.ts';
import { TRANSCRIPTS } from './transcripts.ts';

const { heard } = hearingIn(SPANISH);
const HOLDING = wordsAt('holding');

test('a light and the name of an arrow are one verdict', () => {
  const verdict = { light: 'flicker', arrows: 'left' };
  expect(heard('parpadeo, flecha izquierda', HOLDING)).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict } });
});

describe('what a recogniser writes', () => {
  const all = Object.entries(TRANSCRIPTS).flatMap(([word, texts]) => texts.split(' | ').map((text) => ({ word: word as Word, text })));
  const answered = all.flatMap(({ word, text }) =>
    MOMENTS.filter(({ words }) => words.includes(word)).map(({ name, words }) => ({ moment: name, word, text, answer: heard(text, words) })),
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

test('a word with "no" before it, which turns it round, is not taken', () => {
  const taken = MOMENTS.flatMap(({ words: allowed }) =>
    phrasesOf(SPANISH, allowed)
      .filter(({ word }) => word !== 'same' && word !== 'nothing')
      .flatMap(({ word, said }, at) =>
        [`no ${said}`, `no está ${said}`, `todavía no ${said}`].filter((_, way) => way === at % 3).map((text) => ({ word, text })),
      )
      .filter(({ word, text }) => {
        const answer = heard(text, allowed);
        return answer.is === 'taken' && answer.words === SPANISH.words[word].say;
      }),
  );
  expect(taken).toEqual([]);
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
