// The corrections that heard words may say: "set plus seven", "said plush heaven", "minus one two". A sign must be
// heard, as a lost minus sends the person the wrong way; "thirty" may have been "thirteen" and is never taken as it is.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import type { Phones } from '../../hearing/languages/sounds.ts';
import { steps, type Steps } from '../../units.ts';
import { numberForms } from '../numberForms.ts';
import type { Pronounce } from './pronouncer.ts';
import { leastDistance, soundDistance, weight } from './soundDistance.ts';
import { bareWordsIn } from './spokenText.ts';
import type { Courtesy } from './courtesy.ts';

interface HeardValue {
  readonly value: Steps;
  readonly apart: number;
  /** The number could be another that sounds much like it: always asked back. */
  readonly doubtful: boolean;
}

/** How far a sound may be from a sign's to count as one, and how far a number's. */
const SIGN_REACH = 0.3;
/** How far what stands before them may be from "set", and how far where sign and number are as they should be. */
const OPENING_REACH = 0.3;
const OPENING_REACH_BEFORE_EXACT = 0.5;
/** Of a word only its beginning and stressed vowel were like it. */
const ONSET_ONLY = 0.1;
/** Courtesy was left out. */
const TRIMMED = 0.02;
const NUMBER_REACH = 0.3;
/** Two words for the sign: "mine is" for "minus". */
const SIGN_LENGTHS = [1, 2];
/** Words before the sign: "set it to". */
const OPENING = 3;
const UNSURE_NUMBER = 0.12;
const CROWDED = 0.45;
/** No scale is longer. */
const LARGEST = 21;

export type Values = (heard: readonly string[], largest: number) => HeardValue[];

export function valuesIn(language: HeardLanguage, pronounce: Pronounce, around: Courtesy): Values {
  const { spellings, takenFor } = language.misheardNumbers;
  const bareWords = bareWordsIn(language);
  const soundsOf = (words: readonly string[]): Phones => words.map(pronounce).join('');
  const signed = (sign: number) => (phrase: string) => {
    const words = bareWords(phrase);
    return { word: words.join(''), sign, phones: soundsOf(words) };
  };
  const signSounds = [...language.signs.plus.map(signed(1)), ...language.signs.minus.map(signed(-1))];
  /** Run together: "surplus". */
  const gluedSounds = signSounds.map(({ word, sign, phones }) => {
    const [first = ''] = language.setting;
    return { word: bareWords(first).join('') + word, sign, phones: soundsOf(bareWords(first)) + phones };
  });
  const setting = language.setting.map((phrase) => bareWords(phrase).join(' '));
  const settingSounds = setting.map((words) => soundsOf(words.split(' ')));
  const numbers = numberForms(language.numbers).map(({ words, size }) => {
    const bare = bareWords(words);
    return { words: bare.join(' '), size, phones: soundsOf(bare) };
  });
  const exact = new Map(numbers.map(({ words, size }) => [words, size]));
  const meantBy = new Map(takenFor);

  /** How far the words before the sign are from "set"; none at all is nearly as good. */
  const openingApart = (words: readonly string[]): number => {
    if (words.length === 0) return 0.02;
    const text = words.join(' ');
    if (setting.includes(text)) return 0;
    const phones = soundsOf(words);
    const whole = Math.min(...settingSounds.map((sounds) => soundDistance(phones, sounds)));
    if (words.length > 1) return whole;
    return Math.min(whole, ONSET_ONLY + soundDistance(onsetOf(phones), settingSounds[0] ?? ''));
  };

  const signIn = (words: readonly string[], isFirst: boolean): { sign: number; apart: number } => {
    const text = words.join('');
    const phones = soundsOf(words);
    const heavy = weight(phones);
    let best = { sign: 0, apart: Infinity };
    for (const { word, sign, phones: sounds } of isFirst ? [...signSounds, ...gluedSounds] : signSounds) {
      if (leastDistance(heavy, weight(sounds)) > SIGN_REACH) continue;
      const apart = text === word ? 0 : 0.04 + soundDistance(phones, sounds);
      if (apart < best.apart) best = { sign, apart };
    }
    return best;
  };

  const numbersIn = (words: readonly string[], largest: number): { size: number; apart: number; doubtful: boolean }[] => {
    const text = words.map((word) => spellings[word] ?? word).join(' ');
    const size = exact.get(text);
    if (size !== undefined) {
      if (size <= largest) return [{ size, apart: 0, doubtful: false }];
      const meant = meantBy.get(size);
      return meant !== undefined && meant <= largest ? [{ size: meant, apart: 0.2, doubtful: true }] : [];
    }
    const phones = soundsOf(text.split(' '));
    const heavy = weight(phones);
    return numbers
      .filter((number) => number.size <= largest && leastDistance(heavy, weight(number.phones)) < NUMBER_REACH)
      .map(({ size: near, phones: sounds }) => ({ size: near, apart: soundDistance(phones, sounds) }))
      .filter(({ apart }) => apart < NUMBER_REACH)
      .map(({ size: near, apart }) => ({ size: near, apart, doubtful: apart > UNSURE_NUMBER || (apart > 0 && isCrowded(near)) }));
  };

  const crowded = new Map<number, boolean>();
  /** Is it like another number in all but its first syllable? Then it must be heard as it is. */
  function isCrowded(size: number): boolean {
    let known = crowded.get(size);
    if (known === undefined) {
      const own = numbers.filter((number) => number.size === size);
      const others = numbers.filter((number) => number.size !== size && number.size < LARGEST);
      known = own.some(({ phones }) => others.some((other) => soundDistance(phones, other.phones) < CROWDED));
      crowded.set(size, known);
    }
    return known;
  }

  return (heard, largest) => {
    const best = new Map<number, HeardValue>();
    const put = (value: number, apart: number, doubtful: boolean) => {
      const whole = value === 0 ? 0 : value;
      if (apart < (best.get(whole)?.apart ?? Infinity)) best.set(whole, { value: steps(whole), apart, doubtful });
    };
    const trimmed = around.trimmed(heard);
    for (const words of trimmed.length < heard.length ? [heard, trimmed] : [heard]) {
      const extra = words === heard ? 0 : TRIMMED;
      for (let at = 0; at <= OPENING; at++) {
        const opening = openingApart(words.slice(0, at));
        if (opening > OPENING_REACH_BEFORE_EXACT) continue;
        // Zero alone needs no sign, but it needs "set": "zero" is said for other reasons.
        if (at > 0 && opening <= OPENING_REACH && exact.get(words.slice(at).join(' ')) === 0) put(0, opening + extra, opening > 0.1);
        for (const length of SIGN_LENGTHS) {
          const rest = words.slice(at + length);
          if (rest.length === 0) continue;
          const { sign, apart } = signIn(words.slice(at, at + length), at === 0);
          if (apart > SIGN_REACH) continue;
          for (const number of numbersIn(rest, largest)) {
            if (opening > OPENING_REACH && apart + number.apart > 0) continue;
            put(sign * number.size, opening * 0.4 + apart * 0.8 + number.apart + extra, number.doubtful || opening > OPENING_REACH);
          }
        }
      }
    }
    return [...best.values()].sort((a, b) => a.apart - b.apart);
  };
}

/** To the consonant after the stressed vowel: what is heard best of a word (Marslen-Wilson and Zwitserlood 1989). */
function onsetOf(phones: Phones): Phones {
  const stressed = [...phones].findIndex((phone) => phone !== phone.toLowerCase());
  return stressed === -1 ? phones : phones.slice(0, stressed + 2);
}
