// Contract of the strict matcher: words understood now are taken, doubt is asked about, other talk is left alone.
import { describe, expect, test } from 'vitest';
import type { Word } from '../../src/sweep/inputs.ts';
import { understood } from '../../src/sweep/understood.ts';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';
import { strictMatcherFor, type Match } from '../../src/voice/matching.ts';
import { inPhase } from '../sweep/staged.ts';

const match = strictMatcherFor(ENGLISH_WRITTEN);
const HOLDING = understood(inPhase('holding')).words;
const PLAIN_HOLDING = understood(inPhase('holding', { arrows: 'absent' })).words;
const DIALLING = understood(inPhase('dialling')).words;

const final = (allowed: readonly Word[], ...texts: string[]): Match =>
  match(
    texts.map((text) => ({ text })),
    allowed,
    true,
  );
const interim = (allowed: readonly Word[], ...texts: string[]): Match =>
  match(
    texts.map((text) => ({ text })),
    allowed,
    false,
  );

test('case, stops and spaces of the recogniser do not matter', () => {
  expect(final(HOLDING, ' Solid. ')).toMatchObject({ is: 'taken', words: 'solid' });
});

test('a light and its arrow in one breath are one verdict, in either order', () => {
  const verdict = { light: 'flicker', arrows: 'left' };
  expect(final(HOLDING, 'flicker left')).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict } });
  expect(final(HOLDING, 'left arrow flicker')).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict } });
});

test.each(['set plus seven', 'set +7', 'plus 7', 'Set plus 7.'])('"%s" sets a value, shown as it will be read back', (text) => {
  expect(final(DIALLING, text)).toMatchObject({ is: 'taken', input: { told: 'set', value: 7, by: 'voice' }, words: 'set +7' });
});

test('a value without a sign is asked about again, because a lost minus would send the person the wrong way', () => {
  expect(final(DIALLING, 'set seven')).toMatchObject({ is: 'unclear' });
});

test('words that make no sense now are ignored', () => {
  expect(final(DIALLING, 'solid')).toEqual({ is: 'ignored' });
  expect(final(HOLDING, 'set plus seven')).toEqual({ is: 'ignored' });
});

test.each(['solid work on that table', 'I think it flickers', 'a left turn', 'hello', '', 'undo the strap'])('other talk is ignored: "%s"', (text) => {
  expect(final(HOLDING, text)).toEqual({ is: 'ignored' });
});

test('a lower guess counts where the higher ones are no words at all', () => {
  expect(final(HOLDING, 'salad', 'solid')).toMatchObject({ is: 'taken', words: 'solid' });
});

test('guesses that tell different things are asked about again', () => {
  expect(final(HOLDING, 'left', 'right')).toMatchObject({ is: 'unclear' });
  expect(final(HOLDING, 'solid', 'flicker')).toMatchObject({ is: 'unclear' });
});

test('of several values the likeliest is taken, because it is read back before anything is held', () => {
  expect(final(DIALLING, 'set plus nine', 'set plus five')).toMatchObject({ is: 'taken', input: { value: 9 } });
});

describe('before the person has stopped', () => {
  test('a word that cannot go on is taken at once', () => {
    expect(interim(PLAIN_HOLDING, 'flicker')).toMatchObject({ is: 'taken' });
    expect(interim(HOLDING, 'undo')).toMatchObject({ is: 'taken' });
    expect(interim(HOLDING, 'flicker left')).toMatchObject({ is: 'taken' });
  });

  test('a light that an arrow may follow, and a value, wait for the end', () => {
    expect(interim(HOLDING, 'flicker')).toEqual({ is: 'ignored' });
    expect(interim(DIALLING, 'set plus one')).toEqual({ is: 'ignored' });
    expect(interim(DIALLING, 'set one')).toEqual({ is: 'ignored' });
    expect(interim(PLAIN_HOLDING, 'solid', 'flicker')).toEqual({ is: 'ignored' });
  });
});
