// Everything of the session that knows the stored kit and logbook field by field, in one part: it is read while the panel
// draws itself, and nothing stored is touched before it is there.
import type { Moment } from '../../units.ts';
import type { Carrier } from './carrier.ts';
import { createEnding, type Ending } from './ending.ts';
import { createJob, type Job } from './job.ts';
import { createKitForms, type KitForms } from './kitForms.ts';
import type { LibraryStore } from './library.ts';
import { createWritings, type Writings } from './writings.ts';

export { contentsOf } from '../../logbook/stored.ts';
export { load } from './load.ts';
export { watchSync } from './watchSync.ts';

export type Desk = KitForms & Writings & Job & Ending;

export const createDesk = (library: LibraryStore, carrier: Carrier, newId: () => string, now: () => Moment): Desk => ({
  ...createKitForms(library, newId, now),
  ...createWritings(library, newId),
  ...createJob(library, now),
  ...createEnding({ library, carrier, now, newId }),
});
