// What lies between two corrections, or between two counts, is written with the decimal sign of its language, and is not rounded away.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Language } from '../../src/language.ts';
import type { Outcome } from '../../src/sweep/end/outcome.ts';
import { millimetres, moment, steps } from '../../src/units.ts';
import { changeLanguages, readWords, words } from '../../src/words/catalogue.ts';
import { BAND } from '../bandOutcome.ts';
import { CARRIED } from '../carriedOutcome.ts';

const { interval, tally } = BAND;
const PAST: Outcome = { found: 'past the limit', side: 'high', visible: steps(5), bound: 12.5, interval, tally };

describe.each<[Language, string]>([
  ['en', '.'],
  ['de', ','],
  ['es', ','],
  ['fr', ','],
  ['ja', '.'],
])('in %s', (language, sign) => {
  beforeAll(async () => {
    await readWords('spoken', 'rig', 'logbook');
    await changeLanguages({ screens: language, voice: language });
  });
  afterAll(() => changeLanguages({ screens: 'en', voice: 'en' }));

  test('a centre between two values, the bound of one past the limit, and one carried over', () => {
    const { outcome } = words('spoken');
    expect(outcome({ ...BAND, other: steps(6) }).written).toContain(`+5${sign}5`);
    expect(outcome(PAST).written).toContain(`+12${sign}5`);
    const carried = outcome({ ...CARRIED, centre: 18.5 }).written;
    for (const number of [18, 19]) expect(carried).toContain(`+${number}${sign}5`);
  });

  test('a distance of eight and a half focal lengths, and measurements three and a half steps apart', () => {
    expect(words('rig').stands(millimetres(850), 8.5, 'm')).toContain(`8${sign}5`);
    expect(words('logbook').due({ why: 'drift', since: moment(0), apart: 3.5 })).toContain(`3${sign}5`);
  });
});
