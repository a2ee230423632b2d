// Contract of a change of language: whatever a screen asks for while the new language is read is there, too, when everything changes.
import { expect, test, vi } from 'vitest';

test('what a screen that opens meanwhile reads is there in the new language at once', async () => {
  // Nothing has been read yet.
  vi.resetModules();
  const { changeLanguages, readWords, words } = await import('../../src/words/catalogue.ts');
  const { inUse } = await import('../../src/words/inUse.ts');
  await readWords('workshop', 'plan');
  const seen: string[] = [];
  inUse.subscribe(({ screens }) => {
    if (screens === 'fr') seen.push(words('card').title);
  });
  const changing = changeLanguages({ screens: 'fr', voice: 'fr' });
  await readWords('card');
  await changing;
  expect(seen).toEqual([words('card').title]);
});
