// How old a measurement may be: in a list beside its label, and within a line.
import { afterEach, expect, test } from 'vitest';
import type { Language } from '../../src/language.ts';
import { changeLanguages, readWords, words } from '../../src/words/catalogue.ts';

afterEach(() => changeLanguages({ screens: 'en', voice: 'en' }));

test.each<[Language, readonly string[], readonly string[]]>([
  ['en', ['6 months', '1 year'], ['due again after 6 months', 'due again after 1 year']],
  ['de', ['6 Monate', '1 Jahr'], ['wieder fällig nach 6 Monaten', 'wieder fällig nach 1 Jahr']],
  ['es', ['6 meses', '1 año'], ['pendiente al cabo de 6 meses', 'pendiente al cabo de 1 año']],
  ['fr', ['6 mois', '1 an'], ['à remesurer après 6 mois', 'à remesurer après 1 an']],
  ['ja', ['6か月', '1年'], ['6か月で要再測定', '1年で要再測定']],
])('in %s', async (language, listed, within) => {
  await readWords('settings');
  await changeLanguages({ screens: language, voice: language });
  const ages = [
    { in: 'months', count: 6 },
    { in: 'years', count: 1 },
  ] as const;
  const { again, states } = words('settings');
  expect(ages.map(again.age)).toEqual(listed);
  expect(ages.map((age) => states.logbook(age, false))).toEqual(within);
});
