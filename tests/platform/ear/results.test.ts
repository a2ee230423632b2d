// Contract of what a recogniser hands over: every piece counts, together and by itself, and what it does not trust is doubtful.
import { expect, test } from 'vitest';
import { heardIn, type Results } from '../../../src/platform/ear/results.ts';

const piece = (isFinal: boolean, ...said: readonly (readonly [transcript: string, confidence: number])[]): Results[number] =>
  Object.assign(
    said.map(([transcript, confidence]) => ({ transcript, confidence })),
    { isFinal },
  );

test('one result is its guesses, the likeliest first', () => {
  expect(heardIn([piece(true, ['flicker', 0.9], ['flick her', 0.6])])).toEqual([{ guesses: [{ text: 'flicker' }, { text: 'flick her' }], final: true }]);
});

test('of several the whole comes first, and is final only where all of it is; then each final one by itself, the newest first', () => {
  expect(heardIn([piece(true, ['mind the tripod', 0.9]), piece(true, [' flicker', 0.9]), piece(false, [' le', 0.1], [' left', 0.1])])).toEqual([
    { guesses: [{ text: 'mind the tripod flicker le' }, { text: 'mind the tripod flicker left' }], final: false },
    { guesses: [{ text: 'flicker' }], final: true },
    { guesses: [{ text: 'mind the tripod' }], final: true },
  ]);
});

test('a final guess that the recogniser does not trust is doubtful; one that it says nothing of, or that may still change, is not', () => {
  const doubtful = (final: boolean, confidence: number) => heardIn([piece(final, ['solid', confidence])])[0]?.guesses[0]?.doubtful ?? false;
  expect([doubtful(true, 0.3), doubtful(true, 0.8), doubtful(true, 0), doubtful(false, 0.3)]).toEqual([true, false, false, false]);
});

test('nothing at all, and results without a guess, are nothing', () => {
  expect([heardIn([]), heardIn([piece(true)])]).toEqual([[], []]);
});
