// Contract of the sentences that name the language which the recogniser lacks: the voice's, in the language of the sentence.
import { afterEach, expect, test } from 'vitest';
import { LANGUAGES, type Language } from '../../src/language.ts';
import { aloud, changeLanguages, readWords, words } from '../../src/words/catalogue.ts';

afterEach(() => changeLanguages({ screens: 'en', voice: 'en' }));

test.each<[Language, Language, string, string]>([
  ['en', 'ja', 'does not know Japanese here', '日本語に対応していません'],
  ['de', 'fr', 'versteht hier kein Französisch', 'ne connaît pas le français'],
  ['es', 'de', 'no conoce aquí el alemán', 'versteht kein Deutsch'],
  ['fr', 'en', 'ne connaît pas l’anglais ici', 'does not know English'],
  ['ja', 'es', 'スペイン語に対応していません', 'no conoce el español'],
])('screens in %s, the voice in %s', async (screens, voice, shown, said) => {
  await readWords('voice');
  await changeLanguages({ screens, voice });
  expect(words('voice').deaf['no language']).toContain(shown);
  expect(aloud('voice').deafSaid['no language']).toContain(said);
});

test('the mark has room for it, whatever the voice is', async () => {
  await readWords('voice');
  for (const screens of LANGUAGES) {
    for (const voice of LANGUAGES) {
      await changeLanguages({ screens, voice });
      expect(words('voice').markDeaf['no language'].length).toBeLessThanOrEqual(12);
    }
  }
});
