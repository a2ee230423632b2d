// Contract of the matcher by sound: near enough is taken, doubt is asked about, other talk is left alone; a reading is
// never flipped by a likeness.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import { understood } from '../../../src/sweep/understood.ts';
import { sayCorrection } from '../../../src/hearing/languages/en/sayCorrection.ts';
import type { Match } from '../../../src/voice/matching.ts';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { inPhase } from '../../sweep/staged.ts';

const { match, questionIn } = matcherFor(ENGLISH);
const HOLDING = understood(inPhase('holding')).words;
const DIALLING = understood(inPhase('dialling')).words;
const heard = (allowed: readonly Word[], ...texts: string[]): Match =>
  match(
    texts.map((text) => ({ text })),
    allowed,
    true,
  );

/** At a result that gives a value. */
const RESULT = ['entered', 'next', 'undo', 'repeat', 'help'] as const satisfies readonly Word[];

test('at a result no word of a sweep is taken for one of its own', () => {
  for (const said of ['solid', 'delayed', 'flicker', 'holding', 'accept', 'finish', 'centre']) {
    expect({ said, is: heard(RESULT, said).is }).not.toMatchObject({ is: 'taken' });
  }
});

test.each(['interred', 'and third', 'entered please', 'it is entered'])('"%s" is taken for entered', (text) => {
  expect(heard(RESULT, text)).toMatchObject({ is: 'taken', words: 'entered' });
});

test.each([
  ['flicka', 'flicker'],
  ['rite', 'right'],
  ["it's balanced please", 'balanced'],
  ['undo undo', 'undo'],
])('"%s" sounds like %s and is taken for it', (text, words) => {
  expect(heard(HOLDING, text)).toMatchObject({ is: 'taken', words });
});

test('a light and an arrow in one breath are one verdict by sound, too', () => {
  expect(heard(HOLDING, 'flica left')).toMatchObject({
    is: 'taken',
    input: { told: 'verdict', verdict: { light: 'flicker', arrows: 'left' } },
  });
});

test.each([
  ['Okay, flicker.', 'flicker'],
  ['uh, delayed please', 'delayed'],
  ['could you undo that thanks', 'undo'],
  ['paused', 'pause'],
])('"%s" tells %s: courtesy, thinking and endings say nothing', (text, words) => {
  expect(heard([...HOLDING, 'pause'], text)).toMatchObject({ is: 'taken', words });
});

test.each([
  ['noting', 'nothing'],
  ['the lates', 'delayed'],
  ['to laid', 'delayed'],
  ["that's right", 'right'],
  ['liquor', 'flicker'],
])('"%s" may be %s and is asked about', (text, words) => {
  expect(heard(HOLDING, text)).toMatchObject({ is: 'unclear', best: { words } });
});

test.each(['delete', 'right now', 'right there', 'all right', 'okay', 'thank you', 'same here'])('"%s" is nearly a word, and is other talk', (text) => {
  for (const allowed of [HOLDING, DIALLING, WORDS]) expect(heard(allowed, text)).toEqual({ is: 'ignored' });
});

test.each(['light', 'lied', 'laughed'])('"%s" is near an arrow and is never taken for it', (text) => {
  expect(heard(HOLDING, text).is).not.toBe('taken');
});

test.each(['what time is it', 'thank you', 'twelve', 'open the window', 'negative feedback', 'the light is nice today'])('"%s" is other talk', (text) => {
  for (const allowed of [HOLDING, DIALLING, WORDS]) expect(heard(allowed, text)).toEqual({ is: 'ignored' });
});

test('guesses that disagree about an arrow are asked about', () => {
  expect(heard(HOLDING, 'left', 'right')).toMatchObject({ is: 'unclear' });
});

describe('a value', () => {
  const FORMS: readonly ((value: number) => string)[] = [
    (value) => `${value > 0 ? '+' : '\u2212'}${Math.abs(value)}`,
    (value) => `set ${value > 0 ? '+' : '-'}${Math.abs(value)}`,
    (value) => `Set ${sayCorrection(value)}.`,
    (value) => `${value > 0 ? 'positive' : 'negative'} ${Math.abs(value)}`,
    (value) => `set it to ${value > 0 ? 'plus' : 'minus'} ${[...String(Math.abs(value))].join(' ')}`,
  ];

  test('of the scale is understood in every form a recogniser writes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -20, max: 20 }).filter((n) => n !== 0),
        fc.constantFrom(...FORMS),
        (value, form) => {
          expect(heard(DIALLING, form(value))).toMatchObject({ is: 'taken', input: { told: 'set', value } });
        },
      ),
      { numRuns: 300 },
    );
  });

  test.each([
    ['set plus to', 2],
    ['sad plus seven', 7],
    ['set minus one two', -12],
    ['set–12', -12],
    ['set plus tree please', 3],
    ['step plus seven', 7],
    ['okay said minus niner', -9],

    ['set zero', 0],
  ])('"%s" is %i', (text, value) => {
    expect(heard(DIALLING, text)).toMatchObject({ is: 'taken', input: { told: 'set', value } });
  });

  test.each(['set plus fifty', 'set minus 30', 'plus ninety'])('"%s" may have been a teen and is asked about', (text) => {
    expect(heard(DIALLING, text)).toMatchObject({ is: 'unclear' });
  });

  test.each([
    ['set plus fife', 5],
    ['set plus leaven', 11],
    ['surplus six', 6],
    ['7th plus 5', 5],
    ['set minus four team', -14],
  ])('"%s" may be %i and is asked about', (text, value) => {
    expect(heard(DIALLING, text)).toMatchObject({ is: 'unclear', best: { input: { value } } });
  });

  test('whose sign was not heard is never taken', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (value) => {
        expect(heard(DIALLING, `set ${value}`).is).not.toBe('taken');
      }),
    );
  });

  test('whose guesses differ is asked about', () => {
    expect(heard(DIALLING, 'minus nine', 'minus five')).toMatchObject({ is: 'unclear' });
  });
});

test('no text whatever makes it fail, and nothing that is not allowed comes out', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 60 }), fc.subarray([...WORDS]), (text, allowed) => {
      const answer = heard(allowed, text);
      expect(answer.is !== 'taken' || answer.input.told !== 'set' || allowed.includes('set')).toBe(true);
    }),
    { numRuns: 200 },
  );
});

test.each([
  ['look up 85', 'eighty five'],
  ['Lookup 24-70 mm', 'twenty four seventy mm'],
  ['luke up fifty', 'fifty'],
  ['please look it up, uh, 50 thanks', 'fifty'],
  ['check the 85', 'eighty five'],
  ['what was the 24 to 70', 'the twenty four to seventy'],
  ['check the door', null],
  ['what was that', null],
  ['look out', null],
  ['look up', ''],
  ['open the door', null],
])('looking up: "%s" asks for %s', (text, query) => {
  expect(questionIn(text)).toBe(query);
});

test('the name of a lens is looked up as a number is', () => {
  expect(questionIn('what was the Orrin', ['Orrin 85'])).toBe('the orrin');
  expect(questionIn('what was the Orrin')).toBeNull();
});
