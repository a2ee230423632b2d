// What is taken as it is spelt, kept, and the rules that stand at its edges: corrections in words, the strict matcher, what may go on.
import { describe, expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';
import { FRENCH_WRITTEN } from '../../src/hearing/languages/fr/vocabulary.ts';
import { JAPANESE_WRITTEN } from '../../src/hearing/languages/ja/vocabulary.ts';
import { WORDS, type Word } from '../../src/sweep/inputs.ts';
import { correctionsIn } from '../../src/voice/corrections.ts';
import { strictMatcherFor, type Match } from '../../src/voice/matching.ts';
import { sevenDigits } from '../kept/sevenDigits.ts';

describe('a correction', () => {
  test.each([
    ['English', ENGLISH_WRITTEN],
    ['French', FRENCH_WRITTEN],
    ['Japanese', JAPANESE_WRITTEN],
  ])('in %s, in every form', (_, language) => {
    const { wordsOf, correctionIn } = correctionsIn(language);
    const [plus, minus] = [language.signs.plus, language.signs.minus].map((words) => words.at(-1) ?? '') as [string, string];
    const { say } = language.numbers;
    const sizes = [0, 1, 4, 9, 10, 11, 12, 21, 30, 80, 99, 100];
    const read = (text: string): number | null => correctionIn(wordsOf(text));
    const rows = sizes.map((size) => [`+${size}`, `- ${size}`, `${plus} ${say(size)}`, `${minus} ${say(size)}`, `${minus} ${say(0)} ${say(size)}`, `${plus} ${[...String(size)].map((digit) => say(Number(digit))).join(' ')}`, say(size), String(size)].map((text) => read(text) ?? NaN)); // prettier-ignore
    expect(rows.map(sevenDigits)).toMatchSnapshot();
  });

  const { wordsOf, correctionIn } = correctionsIn(ENGLISH_WRITTEN);

  test('needs its sign first, and a number alone is one where it is nought', () => {
    expect(['', 'plus', 'zero', 'one', 'plus zero', 'minus zero', 'minus one', 'one minus', 'zero minus'].map((text) => correctionIn(wordsOf(text)))).toEqual([null, null, 0, null, 0, 0, -1, null, null]); // prettier-ignore
  });

  test('has two figures in a word at most', () => {
    expect(['plus 9', 'plus 99', 'plus 099', 'plus 100', 'plus 9 9', 'plus 0 9', 'plus 0 0 9'].map((text) => correctionIn(wordsOf(text)))).toEqual([9, 99, null, null, 99, 9, null]); // prettier-ignore
  });

  test('a stroke is a minus before a figure at the start or behind a blank alone', () => {
    expect(['-5', 'set -5', 'set - 5', 'x-5', '-five', '\u20145', '+5'].map((text) => wordsOf(text).join(' '))).toEqual(['minus 5', 'set minus 5', 'set minus 5', 'x 5', 'five', 'minus 5', 'plus 5']); // prettier-ignore
  });
});

const match = strictMatcherFor(ENGLISH_WRITTEN);
const told = (texts: readonly string[], allowed: readonly Word[], final = true): string => shortly(match(texts.map((text) => ({ text })), allowed, final)); // prettier-ignore
const shortly = (found: Match): string => (found.is === 'taken' ? found.words : found.is === 'ignored' ? '' : `${found.best?.words ?? ''}?`);

describe('as it is spelt', () => {
  test('every phrase that is known is the first word that it may be', () => {
    const phrases = WORDS.flatMap((word) => [ENGLISH_WRITTEN.words[word].say, ...ENGLISH_WRITTEN.words[word].also]);
    expect(phrases.map((phrase) => `${phrase}: ${told([phrase], WORDS)}, ${told([phrase], WORDS, false)}`)).toMatchSnapshot();
  });

  test('"set" alone tells nothing, and behind it a number without a sign is asked about once the person has stopped', () => {
    expect([told(['set'], WORDS), told(['set one'], WORDS), told(['set one'], WORDS, false), told(['set one'], ['undo']), told(['one set'], WORDS), told(['door', 'set x'], ['set'])]).toEqual(['', '?', '', '', '', '?']); // prettier-ignore
  });

  test('a value may stand behind "set" or alone, and counts only where one may be set', () => {
    expect([told(['set plus one'], ['set']), told(['plus one'], ['set']), told(['plus one'], ['undo']), told(['set zero'], ['set']), told(['zero'], ['set'])]).toEqual(['set +1', 'set +1', '', 'set 0', 'set 0']); // prettier-ignore
  });

  const PAIRS: readonly Word[] = ['flicker', 'nothing', 'left', 'balanced', 'undo'];

  test('two words are one where one is a light and one its arrows, wherever the cut lies', () => {
    const texts = ['flicker left', 'left flicker', 'no light both even', 'arrow left no light', 'flicker nothing', 'left balanced', 'flicker undo', 'flicker right', 'flicker left left', 'flicker']; // prettier-ignore
    expect(texts.map((text) => told([text], PAIRS))).toEqual([
      'flicker left',
      'flicker left',
      'nothing balanced',
      'nothing left',
      '',
      '',
      '',
      '',
      '',
      'flicker',
    ]);
  });

  test('before the person has stopped a light and arrows wait where the other may follow', () => {
    const cases: [string, readonly Word[]][] = [['flicker', PAIRS], ['left', PAIRS], ['flicker left', PAIRS], ['undo', PAIRS], ['flicker', ['flicker', 'undo']], ['left', ['left', 'undo']], ['plus one', WORDS]]; // prettier-ignore
    expect(cases.map(([text, allowed]) => told([text], allowed, false))).toEqual(['', '', 'flicker left', 'undo', 'flicker', 'left', '']);
  });

  test('guesses that differ are asked about once the person has stopped; of values the first counts', () => {
    const cases: [readonly string[], boolean][] = [[['undo', 'pause'], true], [['undo', 'pause'], false], [['undo', 'undo that'], true], [['undo', 'scratch that'], false], [['plus one', 'plus two'], true], [['undo', 'plus two'], true], [['plus two', 'undo'], true], [['x', 'undo'], true]]; // prettier-ignore
    expect(cases.map(([texts, final]) => told(texts, WORDS, final))).toEqual(['undo?', '', 'undo', 'undo', 'set +1', 'undo?', 'set +2', 'undo']);
  });

  test('a language that denies behind the word waits for the end with every word', () => {
    const late = strictMatcherFor({ ...ENGLISH_WRITTEN, deniesBehind: true });
    expect([false, true].map((final) => shortly(late([{ text: 'undo' }], WORDS, final)))).toEqual(['', 'undo']);
  });
});
