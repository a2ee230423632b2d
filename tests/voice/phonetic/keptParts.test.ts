// What the matcher is made of, kept: how near made-up talk comes to every word, what is left out of it and at what cost, and which values
// it may say, in English and in a language that nobody speaks.
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { WORDS } from '../../../src/sweep/inputs.ts';
import { commandsIn } from '../../../src/voice/phonetic/commands.ts';
import { courtesyIn } from '../../../src/voice/phonetic/courtesy.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { spokenWordsIn } from '../../../src/voice/phonetic/spokenText.ts';
import { valuesIn } from '../../../src/voice/phonetic/values.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { talkIn, valuesIn as saidValuesIn, WHOLE } from '../keptTalk.ts';

const shown = (apart: number): string => String(sevenDigits(apart));

describe.each<[string, HeardLanguage, number]>([
  ['made up', WHOLE, 120],
  ['English', ENGLISH, 16],
])('%s', (_, language, count) => {
  const pronounce = pronouncer(language.pronunciation);
  const spoken = spokenWordsIn(language);
  const around = courtesyIn(language, pronounce);
  const talk = talkIn(language, count, 51, 3);

  test('as words', () => {
    expect(talk.map((text) => spoken(text).join(' ')).join(' | ')).toMatchSnapshot();
  });

  test('what is left of it', () => {
    const rests = (text: string): string =>
      around
        .restsOf(spoken(text))
        .map(({ words, cost, everyday }) => `${words.join(' ')} ${shown(cost)} ${shown(everyday)}`)
        .join(' | ');
    expect(talk.slice(0, 60).map(rests)).toMatchSnapshot();
  });

  test('the words that it is near', () => {
    const nearest = commandsIn(language, pronounce, around);
    const few = (text: string): string =>
      nearest(spoken(text), WORDS)
        .slice(0, 5)
        .map(({ word, apart }) => `${word} ${shown(apart)}`)
        .join(', ');
    expect(talk.map(few)).toMatchSnapshot();
  });

  test('the values that it may say', () => {
    const values = valuesIn(language, pronounce, around);
    const few = (text: string, at: number): string =>
      values(spoken(text), [20, 12, 50][at % 3] ?? 20)
        .slice(0, 5)
        .map(({ value, apart, doubtful }) => `${value} ${shown(apart)}${doubtful ? '?' : ''}`)
        .join(', ');
    expect(saidValuesIn(language, count, 52).map(few)).toMatchSnapshot();
  });
});
