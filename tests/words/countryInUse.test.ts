// Distances are told in what is usual in the person's country, in every sentence that is shown or said, unless the sentence is of a unit.
import { afterEach, expect, test } from 'vitest';
import { countryAmong } from '../../src/country.ts';
import type { Language } from '../../src/language.ts';
import { millimetres, seconds } from '../../src/units.ts';
import { changeLanguages, readWords, words } from '../../src/words/catalogue.ts';
import { countryInUse } from '../../src/words/countryInUse.ts';
import { writing } from '../../src/words/writing.ts';

afterEach(() => {
  countryInUse.value = countryAmong([]);
  return changeLanguages({ screens: 'en', voice: 'en' });
});

const distances = [1750, 4250, 12_340].map(millimetres);

test('in metres or in feet, as fine as they matter', () => {
  const { distance } = writing('en-GB');
  expect(distances.map((one) => distance(one))).toEqual(['1.75\u00a0m', '4.25\u00a0m', '12.3\u00a0m']);
  countryInUse.value = countryAmong(['en-US']);
  expect(distances.map((one) => distance(one))).toEqual(['5.74\u00a0ft', '13.9\u00a0ft', '40.5\u00a0ft']);
  expect(distance(millimetres(4250), 'm')).toBe('4.25\u00a0m');
  // What was typed as whole feet, to the millimetre.
  expect(distance(millimetres(4267))).toBe('14\u00a0ft');
});

test.each<[Language, string, string]>([
  ['en', '85 mm at 4.25 m', '85 mm at 13.9 ft'],
  ['de', '85 mm auf 4,25 m', '85 mm auf 13,9 ft'],
  ['es', '85 mm a 4,25 m', '85 mm a 13,9 ft'],
  ['fr', '85 mm à 4,25 m', '85 mm à 13,9 pi'],
  ['ja', '85 mm・距離4.25 m', '85 mm・距離13.9 ft'],
])('the place of a situation in %s', async (language, inMetres, inFeet) => {
  await readWords('plan');
  await changeLanguages({ screens: language, voice: language });
  const subject = { situation: 's', lens: 'Orrin 85', body: 'Velde M1', focalLength: millimetres(85), distance: millimetres(4250) };
  const said = (): string =>
    words('plan')
      .progress({ done: 0, all: 1, left: seconds(60), next: subject })
      .join(' ')
      .replaceAll(/[\u00a0\u202f]/g, ' ');
  expect(said()).toContain(inMetres);
  countryInUse.value = countryAmong(['en-US']);
  expect(said()).toContain(inFeet);
});
