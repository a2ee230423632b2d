// Contract of the fault report: it counts what is kept, and no word that a person wrote is in it.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { writeFaultReport, type Reported } from '../../src/logbook/faultReport.ts';
import { moment } from '../../src/units.ts';
import { USUAL_SETTINGS } from '../../src/usualSettings.ts';
import { anyLibrary } from './anyLibrary.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

/** A sign that the report never writes of itself. */
const SIGN = '\u2603';

const signed = <Part>(part: Part): Part => {
  if (typeof part === 'string') return `${SIGN}${part}` as Part;
  if (Array.isArray(part)) return part.map(signed) as Part;
  if (part === null || typeof part !== 'object') return part;
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, signed(value)])) as Part;
};

const now = (more: Partial<Reported> = {}): Reported => ({
  at: T0,
  versions: { panel: '0.1.0', browser: 'Heron 5' },
  languages: { screens: 'de', voice: 'en' },
  settings: USUAL_SETTINGS,
  library: libraryWith({}),
  backup: null,
  mishaps: [],
  ...more,
});

test('whatever is in the kit and the logbook, no text of it is in the report', () => {
  fc.assert(
    fc.property(anyLibrary(), (library) => {
      expect(writeFaultReport(now({ library: signed(library) }))).not.toContain(SIGN);
    }),
  );
});

test('nor is the name of this computer, that of its voice, or a stored key', () => {
  const voice = { ...USUAL_SETTINGS.voice, voice: `${SIGN} voice` };
  const logbook = { ...USUAL_SETTINGS.logbook, sync: `${SIGN} desk` };
  const report = writeFaultReport(now({ settings: { ...USUAL_SETTINGS, voice, logbook }, mishaps: [`set-aside:record:${SIGN}`, 'copies'] }));
  expect(report).not.toContain(SIGN);
  expect(JSON.parse(report)).toMatchObject({ settings: { voice: { own: true }, logbook: { carried: true } }, mishaps: ['set-aside', 'copies'] });
});

test('it tells versions, languages, the backup and how much is kept', () => {
  const library = libraryWith({
    lenses: [{ id: 'l' }, { id: 'l2' }],
    records: [sweepRecord('r1', T0, -2, 2), sweepRecord('r2', T0, -2, 2, { practice: true })],
    entries: [{ id: 'e' }],
  });
  expect(JSON.parse(writeFaultReport(now({ library, backup: moment(0) })))).toMatchObject({
    sweepbook: 'fault-report',
    versions: { panel: '0.1.0', browser: 'Heron 5' },
    languages: { screens: 'de', voice: 'en' },
    kept: { version: 3, bodies: 1, lenses: 2, converters: 0, situations: 1, records: 2, practised: 1, byHand: 0, entries: 1, notes: 0, proofs: 0 },
    made: T0,
    backup: 0,
  });
});
