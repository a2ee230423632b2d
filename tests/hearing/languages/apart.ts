// How far apart in sound what counts at one moment stands: words, signs and what asks the logbook, these and the numbers, and the numbers
// of a scale among themselves.
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { hearingIn } from './heard.ts';
import { MOMENTS } from './moments.ts';

export interface Pair {
  readonly one: string;
  readonly other: string;
  readonly apart: number;
}

export type Kind = 'words' | 'words and numbers' | 'numbers';
export const KINDS = ['words', 'words and numbers', 'numbers'] as const satisfies readonly Kind[];

/** No scale has more steps on either side. */
const NUMBERS = 20;

/** Of each kind every pair once, the nearest first. */
export function pairsIn(language: HeardLanguage): Readonly<Record<Kind, readonly Pair[]>> {
  const { words, signs, question } = language;
  const numbers = Array.from({ length: NUMBERS + 1 }, (_, number) => language.numbers.say(number));
  const told = MOMENTS.map((moment) => [
    ...moment.words.map((word) => words[word].say),
    ...(moment.words.includes('set') ? [signs.plus[0], signs.minus[0]] : []),
    ...(moment.asks ? [question.openings[0]] : []),
  ]);
  /** Where a value may be set, or the logbook asked. */
  const beside = MOMENTS.flatMap(({ words: allowed, asks }, at) => (asks || allowed.includes('set') ? (told[at] ?? []) : []));
  const { apart } = hearingIn(language);
  const sorted = (pairs: readonly (readonly [string, string])[]): Pair[] =>
    [...new Map(pairs.map((pair) => [pair.toSorted().join(), pair])).values()]
      .map(([one, other]) => ({ one, other, apart: apart(one, other) }))
      .sort((a, b) => a.apart - b.apart);
  return {
    words: sorted(told.flatMap(amongThemselves)),
    'words and numbers': sorted([...new Set(beside)].flatMap((word) => numbers.map((number) => [word, number] as const))),
    numbers: sorted(amongThemselves(numbers)),
  };
}

const amongThemselves = (phrases: readonly string[]): (readonly [string, string])[] =>
  phrases.flatMap((one, at) => phrases.slice(at + 1).map((other) => [one, other] as const));
