// What comes of made-up talk in the end, kept: of one guess, of several that differ, with few words allowed and with all.
import { expect, test } from 'vitest';
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { shortly } from '../../hearing/languages/heard.ts';
import { talkIn, valuesIn, WHOLE } from '../keptTalk.ts';

const MOMENTS: readonly (readonly Word[])[] = [
  WORDS,
  ['solid', 'delayed', 'flicker', 'nothing', 'left', 'right', 'balanced', 'lopsided', 'undo'],
  ['holding', 'undo', 'set', 'pause', 'help'],
];
const allowedAt = (at: number): readonly Word[] => MOMENTS[at % MOMENTS.length] ?? WORDS;

const { match } = matcherFor(WHOLE);
const { left, right, flicker, balanced } = WHOLE.words;
const SOME = [left, right, flicker, balanced].map(({ say }) => say);
const talk = [...talkIn(WHOLE, 150, 61, 2), ...valuesIn(WHOLE, 50, 62)];

test('of one guess, taken, asked about or left', () => {
  const come = talk.map((text, at) => `${text}: ${shortly(match([{ text }], allowedAt(at), true, [20, 8][at % 2]))}`);
  expect(come).toMatchSnapshot();
});

test('of several guesses', () => {
  const guesses = Array.from({ length: 60 }, (_, at) => [...talk.slice(at, at + 1 + (at % 3)), SOME[at % 4] ?? '', SOME[(at >> 2) % 4] ?? '']);
  const come = guesses.map((texts, at) =>
    shortly(
      match(
        (at % 2 === 0 ? texts : texts.toReversed()).map((text) => ({ text })),
        allowedAt(at),
        true,
      ),
    ),
  );
  expect(come.join(', ')).toMatchSnapshot();
});
