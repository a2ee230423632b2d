// What lies in the store when a desk is set up: a kit, two sweeps, an entry, holds as short as they may be, and a yes to sync.
import { seconds } from '../../../src/units.ts';
import { USUAL_SETTINGS } from '../../../src/usualSettings.ts';
import { VERSION, type Stored } from '../../../src/logbook/stored.ts';
import { libraryWith, sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { RIG_SENSOR } from '../../photographs/rigPicture.ts';

const { kit, records, entries } = libraryWith({
  bodies: [{ id: 'b', sensor: RIG_SENSOR }],
  lenses: [{ id: 'l', widest: { from: 1.8, to: 1.8 } }],
  records: [sweepRecord('r1', T0, 2, 9), sweepRecord('r2', T0 + 40 * 86_400_000, 4, 10)],
  entries: [{ id: 'e1', value: 5, record: 'r1' }],
});

const settings = {
  ...USUAL_SETTINGS,
  manner: { ...USUAL_SETTINGS.manner, holdTime: seconds(3) },
  voice: { ...USUAL_SETTINGS.voice, speak: false },
  sound: false,
  logbook: { ...USUAL_SETTINGS.logbook, sync: 'tripod', remind: false },
  coached: 100,
};

export const FIRST_STORE: Stored = {
  version: VERSION,
  kit,
  settings,
  ...Object.fromEntries(entries.map((entry) => [`entry:${entry.id}`, entry])),
  ...Object.fromEntries(records.map((record) => [`record:${record.id}`, record])),
};
