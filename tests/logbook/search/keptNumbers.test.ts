// Numbers as they are said, and the phrases they are made of, kept for a language that joins its tens by a word and one that does not.
import { expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../../src/hearing/languages/en/vocabulary.ts';
import { SPANISH_WRITTEN } from '../../../src/hearing/languages/es/vocabulary.ts';
import { phrasesOf } from '../../../src/logbook/search/numberPhrases.ts';
import { numberWordsIn } from '../../../src/logbook/search/numberWords.ts';
import { oneLine } from '../../kept/oneLine.ts';

const LANGUAGES = [ENGLISH_WRITTEN, SPANISH_WRITTEN];

test('the phrases of numbers where they are joined, and where not', () => {
  const told = LANGUAGES.map(({ numbers }) => {
    const { sizes, longest, hundred, digits, tens } = phrasesOf(numbers);
    const weighed = [...sizes].reduce((sum, [words, size], at) => sum + (size * words.length + words.charCodeAt(0)) * ((at % 97) + 1), 0);
    return oneLine([sizes.size, weighed, longest, hundred, digits.join('|'), tens.join('|'), Math.max(...sizes.values())]);
  });
  expect(told).toMatchSnapshot();
});

test('numbers that are said, where they are joined, and where not', () => {
  const sizes = [0, 1, 5, 9, 10, 12, 20, 21, 35, 50, 70, 85, 99, 100, 101, 105, 110, 135, 200, 205, 300, 500, 999, 1000, 1250, 1999];
  for (const { numbers } of LANGUAGES) {
    const { inFigures, digitsJoined } = numberWordsIn(numbers);
    const [five, eight] = [numbers.say(5), numbers.say(8)];
    const phrases = [
      ...sizes.map((size) => numbers.say(size)),
      ...sizes.slice(1, 14).map((size) => `${numbers.say(2)} ${numbers.say(size)}`),
      ...sizes.slice(8, 14).map((size) => `${numbers.say(size)} ${numbers.say(200)}`),
      `${five} ${numbers.point} ${eight}`,
      `${five} ${numbers.point} ${numbers.zeros[0] ?? ''} ${eight} x`,
      `${five} ${numbers.point}`,
      `${five} ${numbers.point} x`,
      `m ${five}`,
      `m ${numbers.say(0)}`,
      `m ${numbers.say(12)}`,
      `m 05`,
      `x 85 ${numbers.point} 6 y`,
      `${eight} ${five}`,
      `${eight} ${five} ${numbers.say(0)} 4 7 1`,
      `${numbers.say(30)} ${five} ${eight}`,
      `${numbers.say(35)} ${eight} ${five}`,
      `ax${five} ${eight}`,
    ];
    expect(phrases.map((phrase) => `${phrase}: ${inFigures(phrase)}; ${digitsJoined(phrase)}`)).toMatchSnapshot(numbers.point);
  }
});
