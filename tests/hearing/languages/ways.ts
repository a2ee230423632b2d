// The ways in which people say a correction and recognisers write it, made of what the language knows.
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';

type Way = (value: number) => string;

const MINUS = ['-', '\u2212', '\u2013'];

/** For every correction but zero; each means it and nothing else. */
export function waysIn({ words, signs, setting, around, numbers }: HeardLanguage, sayCorrection: Way): readonly Way[] {
  const signOf = (value: number): string => (value < 0 ? signs.minus : signs.plus)[0];
  const size = (value: number): string => numbers.say(Math.abs(value));
  const set = words.set.say;
  const [courtesy = ''] = around.courtesies;
  const digits = (value: number): string[] => [...String(Math.abs(value))].map((digit) => numbers.say(Number(digit)));
  return [
    sayCorrection,
    (value) => `${set} ${sayCorrection(value)}`,
    (value) => `${set} ${signOf(value)} ${size(value)}`,
    (value) => `${courtesy} ${set} ${sayCorrection(value)}, ${courtesy}.`,
    (value) => `${signOf(value)} ${Math.abs(value)}`,
    (value) => `${set} ${signOf(value)} ${digits(value).join(' ')}`,
    ...MINUS.map(
      (minus): Way =>
        (value) =>
          `${value < 0 ? minus : '+'}${Math.abs(value)}`,
    ),
    ...MINUS.map(
      (minus): Way =>
        (value) =>
          `${set} ${value < 0 ? minus : '+'}${Math.abs(value)}.`,
    ),
    (value) => `${nth(value < 0 ? signs.minus : signs.plus, value)} ${Math.abs(value)}`,
    (value) => `${nth(setting, value)} ${sayCorrection(value)}`,
  ];
}

/** Each of them comes in turn. */
const nth = (list: readonly string[], at: number): string => list[Math.abs(at) % list.length] ?? '';
