// The JSON Schema of the backup file is for other programs; this keeps it in step with the schema the program itself
// reads by (`vitest run -u` writes it anew), and holds both against a validator that is not ours.
import { toJsonSchema } from '@valibot/to-json-schema';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Backup, writeBackup } from '../../src/logbook/backup/backup.ts';
import written from '../../src/logbook/backup/backup.schema.json';
import { moment } from '../../src/units.ts';
import { anyLibrary } from './anyLibrary.ts';
import { libraryWith, sweepRecord, T0 } from './libraryWith.ts';

/** Checks that JSON Schema has no words for (one end below the other, a step that divides the scale) are left out. */
const drawn = toJsonSchema(Backup, { errorMode: 'ignore', target: 'draft-2020-12' });
const document = {
  title: 'Sweepbook backup',
  description: 'Moments are milliseconds since 1970 UTC, lengths millimetres, times seconds, corrections whole numbers.',
  ...drawn,
};

describe('the JSON Schema of the backup', { timeout: 60_000 }, () => {
  const validate = new Ajv2020({ allErrors: true, strictTypes: false }).compile(written);

  it('says what the program reads by', async () => {
    await expect(`${JSON.stringify(document, null, 2)}\n`).toMatchFileSnapshot('../../src/logbook/backup/backup.schema.json');
  });

  it('accepts every backup that is written', () => {
    fc.assert(
      fc.property(anyLibrary(), (library) => {
        validate(JSON.parse(writeBackup(library, moment(1))));
        expect(validate.errors).toBeNull();
      }),
      { numRuns: 200 },
    );
  });

  it('refuses a backup with a field missing, of the wrong kind or out of its range', () => {
    const library = libraryWith({
      records: [sweepRecord('r', T0, 2, 9)],
      entries: [{ id: 'e' }],
      byHand: [{ id: 'h' }],
    });
    const broken: ((backup: { library: ReturnType<typeof structuredClone<typeof library>> }) => unknown)[] = [
      ({ library: { kit } }) => (kit.bodies[0]!.name = ''),
      ({ library: { kit } }) => delete (kit.lenses[0] as { serial?: unknown }).serial,
      ({ library: { entries } }) => (entries[0]!.value = 2.5 as never),
      ({ library: { byHand } }) => (byHand[0]!.finding = { known: 'band' } as never),
      ({ library: { records } }) => (records[0]!.outcome.found = 'gold' as never),
      ({ library }) => (library.version = 1 as never),
    ];
    for (const breaks of broken) {
      const backup = JSON.parse(writeBackup(library, moment(1)));
      breaks(backup);
      expect(validate(backup)).toBe(false);
    }
  });
});
