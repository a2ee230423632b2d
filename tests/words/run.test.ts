// Sentences run on as their language writes them, on the screens and in what is said.
import { afterEach, expect, test } from 'vitest';
import type { Language } from '../../src/language.ts';
import { changeLanguages, readWords, saidAndShown, words } from '../../src/words/catalogue.ts';
import { closed, run, runIn, space } from '../../src/words/run.ts';

afterEach(() => changeLanguages({ screens: 'en', voice: 'en' }));

test.each<[Language, string]>([
  ['en', 'One. Two.'],
  ['de', 'One. Two.'],
  ['es', 'One. Two.'],
  ['fr', 'One. Two.'],
  ['ja', 'One.Two.'],
])('in %s', (language, whole) => {
  expect(runIn(language, ['One.', null, false, undefined, '', 'Two.'])).toBe(whole);
});

test('the screens have their own', async () => {
  await changeLanguages({ screens: 'ja', voice: 'en' });
  expect(run(['はい。', 'いいえ。'])).toBe('はい。いいえ。');
  expect(space()).toBe('');
  await changeLanguages({ screens: 'en', voice: 'ja' });
  expect(run(['Yes.', 'No.'])).toBe('Yes. No.');
  expect(space()).toBe(' ');
});

test('a heading and the phrases of a list end as sentences', async () => {
  expect(['To check', 'Is it square?', 'Look at: the light.', 'So on…', ''].map(closed)).toEqual([
    'To check.',
    'Is it square?',
    'Look at: the light.',
    'So on…',
    '',
  ]);
  await changeLanguages({ screens: 'ja', voice: 'en' });
  expect(['確認すること', '平行ですか？', '見てください。'].map(closed)).toEqual(['確認すること。', '平行ですか？', '見てください。']);
});

test('what is said and shown runs on in each language by itself', async () => {
  await readWords('training');
  await changeLanguages({ screens: 'fr', voice: 'ja' });
  const both = saidAndShown('training', (_, language) => runIn(language, ['a.', 'b.']));
  expect(both).toEqual({ spoken: 'a.b.', written: 'a. b.' });
});

test.each<[Language, string, string]>([
  ['en', 'muted now: Open', '“a”, “b”'],
  ['de', 'muted now: Open', '„a“, „b“'],
  ['es', 'muted now: Open', '«a», «b»'],
  ['fr', 'muted now\u00a0: Open', '«\u202fa\u202f», «\u202fb\u202f»'],
  ['ja', 'muted、now：Open', '「a」「b」'],
])('the mark and the words of the lesson in %s', async (language, mark, lesson) => {
  await readWords('voice');
  await changeLanguages({ screens: language, voice: language });
  expect(words('voice').marked(['muted', 'now'], 'Open')).toBe(mark);
  expect(words('voice').sheet.lesson(['a', 'b'])).toBe(lesson);
});
