// Everything of the session that knows the stored kit and logbook field by field, and what moves a sweep, in one part: it is
// read while the panel draws itself, and nothing stored is touched before it is there.
import type { Moment } from '../../units.ts';
import { createDescribing, type Describing } from './describing.ts';
import { createEnding, type Ending } from './ending.ts';
import { createJob, type Job } from './job.ts';
import { createKitForms, type KitForms } from './kitForms.ts';
import type { LibraryStore } from './library.ts';
import type { Live } from './live.ts';
import { createWritings, type Writings } from './writings.ts';

export { contentsOf } from '../../logbook/stored.ts';
export { engine } from './engine.ts';
export { load, loadLive } from './load.ts';
export { settled } from './settled.ts';
export { watchRoute } from './watchRoute.ts';
export { watchSync } from './watchSync.ts';

export type Desk = KitForms & Writings & Job & Describing & Ending;

interface World {
  readonly library: LibraryStore;
  readonly live: Pick<Live, 'sweep' | 'rework' | 'carrier'>;
  readonly newId: () => string;
  readonly now: () => Moment;
}

export function createDesk({ library, live, newId, now }: World): Desk {
  const forms = createKitForms(library, newId, now);
  const describing = createDescribing(library, forms, live);
  const ending = createEnding({ library, carrier: live.carrier, named: describing.named, now, newId });
  return { ...forms, ...createWritings(library, newId), ...createJob(library, now), ...describing, ...ending };
}
