// How far apart the words of a language are in its sounds: of all that is taught, what is nearest to what.
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import type { Word } from '../../../../src/sweep/inputs.ts';
import { pronouncer } from '../../../../src/voice/phonetic/pronouncer.ts';
import { soundDistance } from '../../../../src/voice/phonetic/soundDistance.ts';
import { bareWordsIn } from '../../../../src/voice/phonetic/spokenText.ts';
import { MOMENTS } from './heardIn.ts';

interface Pair {
  readonly apart: number;
  readonly pair: string;
}

/** The distance between two phrases of the language. */
export function distanceIn(language: HeardLanguage): (one: string, other: string) => number {
  const pronounce = pronouncer(language.pronunciation);
  const sounds = (phrase: string): string => bareWordsIn(language)(phrase).map(pronounce).join('');
  return (one, other) => soundDistance(sounds(one), sounds(other));
}

const byDistance = (pairs: readonly Pair[]): readonly Pair[] => pairs.toSorted((a, b) => a.apart - b.apart);

/** The nearest first, of every pair of taught words that count at one moment, with the signs and what asks the logbook. */
export function taughtPairs(language: HeardLanguage): readonly Pair[] {
  const distance = distanceIn(language);
  const { words, signs, question } = language;
  const beside = [signs.plus[0], signs.minus[0], question.openings[0]];
  const found = new Map<string, number>();
  for (const [, allowed] of MOMENTS) {
    const said = [...allowed.map((word) => words[word].say), ...(allowed.includes('set') ? beside : [])];
    for (const [at, one] of said.entries()) for (const other of said.slice(at + 1)) found.set(`${one}, ${other}`, distance(one, other));
  }
  return byDistance([...found].map(([pair, apart]) => ({ pair, apart })));
}

/** The same of the words that count where a value may be told, and the numbers of a scale. */
export function besideNumbers(language: HeardLanguage): readonly Pair[] {
  const distance = distanceIn(language);
  const allowed = MOMENTS.filter(([, words]) => words.includes('set')).flatMap(([, words]) => words);
  const numbers = Array.from({ length: 21 }, (_, number) => language.numbers.say(number));
  const { plus, minus } = language.signs;
  const said = [...[...new Set<Word>(allowed)].map((word) => language.words[word].say), plus[0], minus[0]];
  return byDistance(said.flatMap((one) => numbers.map((number) => ({ pair: `${one}, ${number}`, apart: distance(one, number) }))));
}
