// The edges of what the matcher by sound takes: exactly as far as counts, exactly as large as the scale, exactly as long as an opening.
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import type { Word } from '../../../src/sweep/inputs.ts';
import { commandsIn } from '../../../src/voice/phonetic/commands.ts';
import { courtesyIn } from '../../../src/voice/phonetic/courtesy.ts';
import { lookUpIn } from '../../../src/voice/phonetic/lookUp.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { spokenWordsIn } from '../../../src/voice/phonetic/spokenText.ts';
import { remembering, pairsIn } from '../../../src/voice/phonetic/twoParts.ts';
import { valuesIn } from '../../../src/voice/phonetic/values.ts';
import { shortly } from '../../hearing/languages/heard.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { WHOLE } from '../keptTalk.ts';

const partsOf = (language: HeardLanguage) => {
  const pronounce = pronouncer(language.pronunciation);
  return [language, pronounce, courtesyIn(language, pronounce)] as const;
};
const split = (text: string): string[] => text.split(' ').filter(Boolean);

test('a hesitation that is known by its sound alone is left out at either end, and not inside', () => {
  const [, , around] = partsOf(WHOLE);
  const left = (text: string): string => around.trimmed(split(text)).join(' ');
  expect(['ham fezu', 'fezu ham', 'vipo ham fezu', 'ham', 'ham ham vipo fezu ham', 'fezu tat'].map(left)).toEqual(['fezu', 'fezu', 'vipo ham fezu', '', 'vipo fezu', 'fezu tat']); // prettier-ignore
});

describe('how near a word is', () => {
  test('what is as far as 0.5, one of two sounds for the other, is not told', () => {
    const skip = { say: 'p', also: [], misheard: [] };
    const nearest = commandsIn(...partsOf({ ...WHOLE, words: { ...WHOLE.words, skip } }));
    expect([nearest(['p'], ['skip']), nearest(['b'], ['skip'])]).toEqual([[{ word: 'skip', apart: 0 }], []]);
  });

  test('another form of a word costs what its sounds do, or 0.12 where that is less', () => {
    const nearest = commandsIn(...partsOf(ENGLISH));
    const forms: [string, Word][] = [['skipped', 'skip'], ['skips', 'skip'], ['resuming', 'resume'], ['resumed', 'resume'], ['pausing', 'pause'], ['repeating', 'repeat'], ['undoing', 'undo'], ['accepting', 'accept'], ['helping', 'help'], ['holdings', 'holding']]; // prettier-ignore
    expect(sevenDigits(forms.map(([form, word]) => nearest([form], [word])[0]?.apart ?? NaN))).toMatchSnapshot();
  });
});

describe('a value', () => {
  const values = valuesIn(...partsOf(WHOLE));
  const spoken = spokenWordsIn(WHOLE);
  const told = (text: string, largest: number): string[] =>
    values(spoken(text), largest).map(({ value, apart, doubtful }) => `${value} ${String(sevenDigits(apart))}${doubtful ? '?' : ''}`);

  test('may be as large as the scale and no larger, as it is spelt and by its sound', () => {
    expect([6, 5].map((largest) => told('kotu dúpi sesa', largest))).toEqual([['6 0'], []]);
    expect([6, 5].map((largest) => told('kotu dúpi seza', largest).some((one) => one.startsWith('6 ')))).toEqual([true, false]);
  });

  test('that is too large may have been another, where that is as large as the scale at most', () => {
    expect([20, 12, 11].map((largest) => told('kotu dúpi béle dek', largest))).toEqual([['20 0'], ['12 0.2?'], []]);
  });

  test('of nought needs "set" before it or a sign', () => {
    expect(
      ['kotu nul', 'kotu la nul', 'nul', 'dúpi nul', 'kotu dúpi nul', 'kodu nul', 'wusha nul', 'kotu nul nul'].map((text) => told(text, 20)),
    ).toMatchSnapshot();
  });

  test('whose parts are a letter away, or with courtesy around it', () => {
    const texts = ['eh kotu dúpi luma', 'kotu dúpi luma eh', 'kotu la dúpi luma', 'kodu dúpi luma', 'kotu la vo dúpi luma', 'drak dúpi luma', 'kovu dúpi lumu', 'kotudúpi luma', 'kotu kotudúpi luma', 'kotu dú pi luma', 'kotu dúbi luma', 'kotu harô', 'harô', 'kotu dúpi béle dek ká', 'kotu dúpi béle deg', 'dúpi béle deg', 'dúpi fozo', 'dúpi nimi', 'dúpi vogo', 'kot dúpi fozo', 'k harô fozo']; // prettier-ignore
    expect(texts.map((text) => `${text}: ${told(text, 30).join(', ')}`)).toMatchSnapshot();
  });

  test('by the sound of every number, and whether it is sure', () => {
    const near = (whole: number): string => told(`dúpi ${WHOLE.numbers.say(whole).replace(/o/, 'u').replace(/á$/, 'o').replace(/e$/, 'i')}`, 30).slice(0, 3).join(', '); // prettier-ignore
    expect(Array.from({ length: 26 }, (_, whole) => `${whole}: ${near(whole)}`)).toMatchSnapshot();
  });
});

describe('a question', () => {
  const asked = lookUpIn(...partsOf(WHOLE));

  test('begins with no more words than the longest opening has', () => {
    expect(['wu sha foso', 'wu sha fo foso', 'wu s ha foso', 'wusha', 'wusa', 'wusa foso'].map((text) => asked(split(text), []))).toEqual(['foso', 'fo foso', null, '', null, 'foso']); // prettier-ignore
  });

  test('begins with the longest opening that is near, though the others be shorter', () => {
    const few = lookUpIn(...partsOf({ ...WHOLE, question: { ...WHOLE.question, everyday: [] } }));
    expect(few(split('wusho fu foso'), [])).toBe('foso');
  });

  test('is none for a word that is said around everything, whatever is named so', () => {
    expect(['dral den', 'dral gost', 'dral den gost'].map((text) => asked(split(text), ['den', 'gost']))).toEqual([null, 'gost', 'den gost']);
  });

  test('ends with the longest of what asks that something stands before', () => {
    expect(['li pado', 'tak li pado', 'pado', 'li pado li pado'].map((text) => asked(split(text), ['li', 'tak']))).toEqual(['li', 'tak', null, 'li pado']); // prettier-ignore
  });
});

describe('in two parts', () => {
  const { match } = matcherFor(WHOLE);
  const told = (text: string): string => shortly(match([{ text }], ['undo', 'flicker', 'left', 'right', 'set'], true));

  test('one word twice, once a little off, is taken although the whole is only near', () => {
    expect(['fezu fesu', 'fezu fezu', 'fezu drako', 'zizi gefo', 'gefo zizi', 'gevo zisi'].map(told)).toMatchSnapshot();
  });

  test('a part that is a light and a part that is no arrow are no pair', () => {
    const near = remembering((words) => (words[0] === 'a' ? [{ word: 'flicker', apart: 0 }] : [{ word: 'undo', apart: 0 }, { word: 'left', apart: 0.3 }]), []); // prettier-ignore
    expect(pairsIn(['a', 'b'], ['flicker', 'left'], near, WHOLE.words).map(({ words, apart }) => [words, apart])).toEqual([['zizi gevo', 0.3]]);
    expect(pairsIn(['a', 'a'], ['flicker', 'left'], near, WHOLE.words)).toEqual([]);
    expect(pairsIn(['b', 'b'], ['flicker', 'left'], near, WHOLE.words)).toEqual([]);
  });
});
