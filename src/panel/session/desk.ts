// Everything of the session that knows the stored kit and logbook field by field, in one part: it is read while the panel
// draws itself, and nothing stored is touched before it is there.
import type { Moment } from '../../units.ts';
import { createDescribing, type Describing, type Running } from './describing.ts';
import { createJob, type Job } from './job.ts';
import { createKitForms, type KitForms } from './kitForms.ts';
import type { LibraryStore } from './library.ts';
import { createWritings, type Writings } from './writings.ts';

export { contentsOf } from '../../logbook/stored.ts';
export { load } from './load.ts';
export { watchSync } from './watchSync.ts';

export type Desk = KitForms & Writings & Job & Describing;

export function createDesk(library: LibraryStore, newId: () => string, now: () => Moment, live: Running): Desk {
  const forms = createKitForms(library, newId, now);
  return { ...forms, ...createWritings(library, newId), ...createJob(library, now), ...createDescribing(library, forms, live) };
}
