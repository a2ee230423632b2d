// Numbers of the distance between rows of sounds, kept: of short ones, of none, and of rows about as long as the room that is set aside.
import { expect, test } from 'vitest';
import { SYMBOLS, VOWEL_LETTERS } from '../../../src/hearing/languages/sounds.ts';
import { seededRandom, type Random } from '../../../src/practice/random.ts';
import { leastDistance, soundDistance, weight } from '../../../src/voice/phonetic/soundDistance.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';

const ALL = [...Object.values(SYMBOLS), ...VOWEL_LETTERS.toUpperCase()];
const row = (random: Random, length: number): string => Array.from({ length }, () => ALL[Math.floor(random() * ALL.length)]).join('');

/** The same with a few sounds changed, lost and added. */
const alike = (random: Random, phones: string): string =>
  [...phones]
    .map((phone) => {
      const chance = random();
      return chance < 0.15 ? row(random, 1) : chance < 0.25 ? '' : chance < 0.35 ? phone + row(random, 1) : phone;
    })
    .join('');

test('of rows that have little in common', () => {
  const random = seededRandom(31);
  expect(sevenDigits(Array.from({ length: 300 }, (_, at) => soundDistance(row(random, at % 7), row(random, Math.floor(at / 7) % 9))))).toMatchSnapshot();
});

test('of rows that are much alike', () => {
  const random = seededRandom(32);
  const pairs = Array.from({ length: 400 }, (_, at) => {
    const phones = row(random, 2 + (at % 12));
    return soundDistance(phones, alike(random, phones));
  });
  expect(sevenDigits(pairs)).toMatchSnapshot();
});

test('of rows that are longer than any before, and of short ones after them', () => {
  const random = seededRandom(33);
  const lengths = [61, 62, 63, 64, 65, 127, 128, 129, 130, 5, 260, 3];
  const pairs = lengths.map((length) => {
    const phones = row(random, length);
    return [soundDistance(phones, alike(random, phones)), soundDistance(phones, row(random, length)), soundDistance(row(random, 4), phones)];
  });
  expect(sevenDigits(pairs)).toMatchSnapshot();
});

test('of any number of rows: what is remembered of them changes nothing', () => {
  const random = seededRandom(34);
  const [first, second] = [row(random, 6), row(random, 7)];
  const before = soundDistance(first, second);
  for (let at = 0; at < 2100; at++) weight(row(random, 5));
  expect(soundDistance(first, second)).toBe(before);
});

test('what there is to hear, and the least that two differ by', () => {
  const random = seededRandom(35);
  const weights = Array.from({ length: 60 }, (_, at) => weight(row(random, at % 8)));
  expect(sevenDigits(weights)).toMatchSnapshot('what there is to hear');
  const pairs = [0, 0.2, 0.3, 0.5, 0.7, 0.8, 1, 2, 5].flatMap((one) => [0, 0.3, 0.5, 0.7, 1, 3].map((other) => leastDistance(one, other)));
  expect(sevenDigits(pairs)).toMatchSnapshot('the least that they differ by');
});
