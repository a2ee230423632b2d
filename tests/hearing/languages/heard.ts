// What was heard, asked in short of the matchers of a language; they are built once a language and file of tests.
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import { correctionsIn } from '../../../src/voice/corrections.ts';
import { strictMatcherFor, type Match } from '../../../src/voice/matching.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { soundDistance } from '../../../src/voice/phonetic/soundDistance.ts';
import { bareWordsIn } from '../../../src/voice/phonetic/spokenText.ts';

interface Hearing {
  heard(text: string, allowed?: readonly Word[], largest?: number): Match;
  /** As it is spelt, with no look at its sound; `final`: the person has stopped. */
  strictly(text: string, allowed: readonly Word[], final?: boolean): Match;
  questionIn(text: string, names?: readonly string[]): string | null;
  /** The correction that is spelt. */
  correction(text: string): number | null;
  sounds(phrase: string): string;
  /** How far apart two phrases sound. */
  apart(one: string, other: string): number;
}

const known = new Map<string, Hearing>();

export function hearingIn(language: HeardLanguage): Hearing {
  const found = known.get(language.tag) ?? made(language);
  known.set(language.tag, found);
  return found;
}

function made(language: HeardLanguage): Hearing {
  const { match, questionIn } = matcherFor(language);
  const strictMatch = strictMatcherFor(language);
  const { correctionIn, wordsOf } = correctionsIn(language);
  const [pronounce, bareWords] = [pronouncer(language.pronunciation), bareWordsIn(language)];
  const sounds = (phrase: string): string => bareWords(phrase).map(pronounce).join('');
  return {
    heard: (text, allowed = WORDS, largest = 20) => match([{ text }], allowed, true, largest),
    strictly: (text, allowed, final = true) => strictMatch([{ text }], allowed, final),
    questionIn,
    correction: (text) => correctionIn(wordsOf(text)),
    sounds,
    apart: (one, other) => soundDistance(sounds(one), sounds(other)),
  };
}

/** "set" is told with a value only. */
export type Told = Exclude<Word, 'set'>;
export const isTold = (word: Word): word is Told => word !== 'set';

/** What is taught for each of these words, and what is understood beside it. */
export const phrasesOf = ({ words }: HeardLanguage, allowed: readonly Word[]): readonly { readonly word: Told; readonly said: string }[] =>
  allowed.filter(isTold).flatMap((word) => [words[word].say, ...words[word].also].map((said) => ({ word, said })));

/** What came of it in one word: what was taken, the same with "?" where it is asked about first, or "" for other talk. */
export const shortly = (answer: Match): string => (answer.is === 'ignored' ? '' : answer.is === 'taken' ? answer.words : `${answer.best?.words ?? ''}?`);
