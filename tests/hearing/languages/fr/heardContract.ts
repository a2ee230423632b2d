// What holds for every language that is heard, given as an argument: its words in each phase, and how far apart they sound.
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import { WORDS, type Input, type Word } from '../../../../src/sweep/inputs.ts';
import { inputOf } from '../../../../src/sweep/meaning.ts';
import { matcherFor } from '../../../../src/voice/phonetic/match.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { soundDistance } from '../../../../src/voice/phonetic/soundDistance.ts';
import { bareWordsIn } from '../../../../src/voice/phonetic/spokenText.ts';

interface Pair {
  readonly one: string;
  readonly other: string;
  readonly apart: number;
}

/** Every taught word and everything also accepted, where one of these words counts. */
export function phrasesOf(language: HeardLanguage, allowed: readonly Word[]): { word: Exclude<Word, 'set'>; said: string }[] {
  return allowed.flatMap((word) => (word === 'set' ? [] : [language.words[word].say, ...language.words[word].also].map((said) => ({ word, said }))));
}

/** Those of them that are not taken as what they stand for. */
export function notTaken(language: HeardLanguage, allowed: readonly Word[]): { said: string; is: string; taken: Input | null }[] {
  const { match } = matcherFor(language);
  return phrasesOf(language, allowed).flatMap(({ word, said }) => {
    const found = match([{ text: said }], allowed, true);
    const taken = found.is === 'taken' ? found.input : null;
    const meant = inputOf(word, 'voice', taken && 'heard' in taken ? taken.heard : null);
    return JSON.stringify(taken) === JSON.stringify(meant) ? [] : [{ said, is: found.is, taken }];
  });
}

/** Phrases of a word that begin one of another: the shorter would be taken before the person has stopped. */
export function beginnings(language: HeardLanguage, allowed: readonly Word[]): [string, string][] {
  const phrases = phrasesOf(language, allowed);
  return phrases.flatMap((one) =>
    phrases.filter((other) => other.word !== one.word && `${other.said} `.startsWith(`${one.said} `)).map((other): [string, string] => [one.said, other.said]),
  );
}

/** Of each from one list and each from another, the nearest first. */
export function pairsApart(language: HeardLanguage, some: readonly string[], others: readonly string[]): Pair[] {
  const pronounce = pronouncer(language.pronunciation);
  const sounds = (phrase: string): string => bareWordsIn(language)(phrase).map(pronounce).join('');
  return some
    .flatMap((one) => others.filter((other) => other !== one).map((other) => ({ one, other, apart: soundDistance(sounds(one), sounds(other)) })))
    .sort((a, b) => a.apart - b.apart);
}

export const taughtWords = (language: HeardLanguage): string[] => WORDS.map((word) => language.words[word].say);
export const numbersOf = ({ numbers }: HeardLanguage, most: number): string[] => Array.from({ length: most + 1 }, (_, whole) => numbers.say(whole));
