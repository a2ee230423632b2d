// Contract of corrections in words: what a recogniser writes is read with its sign or not at all.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { correctionsIn } from '../../../src/voice/corrections.ts';
import { sayCorrection } from '../../../src/hearing/languages/en/sayCorrection.ts';

const { correctionIn, wordsOf } = correctionsIn(ENGLISH_WRITTEN);
const read = (text: string) => correctionIn(wordsOf(text));

test.each([
  ['+7', 7],
  ['-12', -12],
  ['\u221212', -12],
  ['\u201312', -12],
  ['- 12', -12],
  ['plus 7', 7],
  ['plus to', 2],
  ['Plus two.', 2],
  ['minus for', -4],
  ['negative twelve', -12],
  ['positive four', 4],
  ['minus one two', -12],
  ['plus 1 2', 12],
  ['plus twenty one', 21],
  ['plus twenty-one', 21],
  ['minus zero', 0],
  ['zero', 0],
  ['0', 0],
])('"%s" is read as %i', (text, value) => {
  expect(read(text)).toBe(value);
});

test.each(['', 'seven', '12', 'plus', 'minus minus two', 'plus two three four', 'to', 'oh', 'plus twelve one', 'plus 777', 'minus it', 'f-2'])(
  '"%s" is no correction',
  (text) => {
    expect(read(text)).toBeNull();
  },
);

test('every correction that is said is read back as itself', () => {
  fc.assert(
    fc.property(fc.integer({ min: -99, max: 99 }), (value) => {
      expect(read(sayCorrection(value))).toBe(value);
    }),
  );
});

test('a correction is said with its sign always, and half-steps as halves', () => {
  expect([6, -12, 0, 4.5, -0.5, 120].map(sayCorrection)).toEqual([
    'plus six',
    'minus twelve',
    'zero',
    'plus four and a half',
    'minus a half',
    'plus one hundred twenty',
  ]);
});
