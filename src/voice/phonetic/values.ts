// The corrections that heard words may say: "set plus seven", "said plush heaven", "minus one two". A sign must be
// heard, as a lost minus sends the person the wrong way; "thirty" may have been "thirteen" and is never taken as it is.
import { sayNumber } from '../numbers.ts';
import { steps, type Steps } from '../../units.ts';
import type { Language } from './language.ts';
import type { Phones } from './phones.ts';
import { leastDistance, soundDistance, weight } from './soundDistance.ts';

interface HeardValue {
  readonly value: Steps;
  readonly apart: number;
  /** The number could be another that sounds much like it: always asked back. */
  readonly doubtful: boolean;
}

/** How far a sound may be from a sign's to count as one, and how far a number's. */
const SIGN_REACH = 0.3;
const NUMBER_REACH = 0.3;
/** Two words for the sign: "mine is" for "minus". */
const SIGN_LENGTHS = [1, 2];
/** Words before the sign: "set it to". */
const OPENING = 3;
const UNSURE_NUMBER = 0.12;

export type Values = (heard: readonly string[], largest: number) => HeardValue[];

export function valuesIn({ signs, numberSpellings, setting, pronounce }: Language): Values {
  const soundsOf = (words: readonly string[]): Phones => words.map(pronounce).join('');
  const signSounds = [
    ...signs.plus.map((word) => ({ word, sign: 1, phones: pronounce(word) })),
    ...signs.minus.map((word) => ({ word, sign: -1, phones: pronounce(word) })),
  ];
  const settingSounds = setting.map((words) => soundsOf(words.split(' ')));
  const numbers = numberForms().map(({ words, size }) => ({ words, size, phones: soundsOf(words.split(' ')) }));
  const exact = new Map(numbers.map(({ words, size }) => [words, size]));

  /** How far the words before the sign are from "set"; none at all is nearly as good. */
  const openingApart = (words: readonly string[]): number => {
    if (words.length === 0) return 0.02;
    const text = words.join(' ');
    if (setting.includes(text)) return 0;
    const phones = soundsOf(words);
    return Math.min(...settingSounds.map((sounds) => soundDistance(phones, sounds)));
  };

  const signIn = (words: readonly string[]): { sign: number; apart: number } => {
    const text = words.join('');
    const phones = soundsOf(words);
    const heavy = weight(phones);
    let best = { sign: 0, apart: Infinity };
    for (const { word, sign, phones: sounds } of signSounds) {
      if (leastDistance(heavy, weight(sounds)) > SIGN_REACH) continue;
      const apart = text === word ? 0 : 0.04 + soundDistance(phones, sounds);
      if (apart < best.apart) best = { sign, apart };
    }
    return best;
  };

  const numbersIn = (
    words: readonly string[],
    largest: number,
  ): { size: number; apart: number; doubtful: boolean }[] => {
    const text = words.map((word) => numberSpellings[word] ?? word).join(' ');
    const size = exact.get(text);
    if (size !== undefined) {
      if (size <= largest) return [{ size, apart: 0, doubtful: false }];
      const teen = size % 10 === 0 ? size / 10 + 10 : Infinity;
      return teen > 12 && teen < 20 && teen <= largest ? [{ size: teen, apart: 0.2, doubtful: true }] : [];
    }
    const phones = soundsOf(text.split(' '));
    const heavy = weight(phones);
    return numbers
      .filter((number) => number.size <= largest && leastDistance(heavy, weight(number.phones)) < NUMBER_REACH)
      .map(({ size: near, phones: sounds }) => ({ size: near, apart: soundDistance(phones, sounds) }))
      .filter(({ apart }) => apart < NUMBER_REACH)
      .map(({ size: near, apart }) => ({ size: near, apart, doubtful: apart > UNSURE_NUMBER }));
  };

  return (heard, largest) => {
    const best = new Map<number, HeardValue>();
    const put = (value: number, apart: number, doubtful: boolean) => {
      const whole = value === 0 ? 0 : value;
      if (apart < (best.get(whole)?.apart ?? Infinity)) best.set(whole, { value: steps(whole), apart, doubtful });
    };
    for (let at = 0; at <= OPENING; at++) {
      const opening = openingApart(heard.slice(0, at));
      if (opening > SIGN_REACH) continue;
      // Zero alone needs no sign, but it needs "set": "zero" is said for other reasons.
      if (at > 0 && exact.get(heard.slice(at).join(' ')) === 0) put(0, opening, opening > 0.1);
      for (const length of SIGN_LENGTHS) {
        const rest = heard.slice(at + length);
        if (rest.length === 0) continue;
        const { sign, apart } = signIn(heard.slice(at, at + length));
        if (apart > SIGN_REACH) continue;
        for (const number of numbersIn(rest, largest)) {
          put(sign * number.size, opening * 0.4 + apart * 0.8 + number.apart, number.doubtful);
        }
      }
    }
    return [...best.values()].sort((a, b) => a.apart - b.apart);
  };
}

/** Whole numbers as they may be said: "twelve" and "one two". */
function numberForms(): { words: string; size: number }[] {
  const forms: { words: string; size: number }[] = [];
  for (let size = 0; size < 100; size++) {
    forms.push({ words: sayNumber(size), size });
    if (size >= 10) forms.push({ words: `${sayNumber(Math.floor(size / 10))} ${sayNumber(size % 10)}`, size });
  }
  return forms;
}
