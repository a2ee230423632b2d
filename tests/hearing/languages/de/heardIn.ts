// What every language must do for whoever speaks it, asked of the one that is given.
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import { WORDS, type Word } from '../../../../src/sweep/inputs.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import type { Match } from '../../../../src/voice/matching.ts';
import { matcherFor } from '../../../../src/voice/phonetic/match.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { soundDistance } from '../../../../src/voice/phonetic/soundDistance.ts';
import { bareWordsIn } from '../../../../src/voice/phonetic/spokenText.ts';
import { inPhase } from '../../../sweep/staged.ts';

const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'turning', 'finished'] as const;

/** The words that count together: in each phase of a sweep, at its result, and in the set-up walk. */
export const MOMENTS: Readonly<Record<string, readonly Word[]>> = {
  ...Object.fromEntries(PHASES.map((phase) => [phase, understood(inPhase(phase)).words])),
  result: ['entered', 'next', 'undo', 'repeat', 'far view', 'help'],
  walk: ['next', 'back', 'repeat'],
};

type Told = Exclude<Word, 'set'>;
export const isTold = (word: Word): word is Told => word !== 'set';

/** What is taught for a word and what is understood beside it. */
export const phrasesOf = ({ words }: HeardLanguage, word: Word): readonly string[] => [words[word].say, ...words[word].also];

interface Hearing {
  heard(text: string, allowed?: readonly Word[], largest?: number): Match;
  questionIn(text: string, names?: readonly string[]): string | null;
  /** How far apart two phrases sound. */
  apart(one: string, other: string): number;
}

export function hearingIn(language: HeardLanguage): Hearing {
  const { match, questionIn } = matcherFor(language);
  const pronounce = pronouncer(language.pronunciation);
  const sounds = (phrase: string): string => bareWordsIn(language)(phrase).map(pronounce).join('');
  return {
    heard: (text, allowed = WORDS, largest = 20) => match([{ text }], allowed, true, largest),
    questionIn,
    apart: (one, other) => soundDistance(sounds(one), sounds(other)),
  };
}

interface Pair {
  readonly pair: string;
  readonly apart: number;
}

/** The two of these that sound most alike. */
export function nearestPair({ apart }: Hearing, phrases: readonly string[]): Pair {
  const pairs = phrases.flatMap((one, at) => phrases.slice(at + 1).map((other) => ({ pair: `${one}, ${other}`, apart: apart(one, other) })));
  return pairs.reduce((nearest, pair) => (pair.apart < nearest.apart ? pair : nearest), { pair: '', apart: Infinity });
}
