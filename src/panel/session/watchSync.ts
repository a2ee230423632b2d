// Whether last values travel between the person's computers: what does it is read only where they asked for it, and once
// more when they no longer want it, to take back what this computer has put there.
import { effect } from '@preact/signals';
import { firstWords } from '../../words/first.ts';
import type { SyncWorld } from './syncing.ts';

export function watchSync(world: SyncWorld): void {
  const { library, troubles } = world;
  let stop: Promise<(() => Promise<void>) | null> | null = null;
  let name: string | null = null;

  const part = () =>
    import('./syncing.ts').catch(() => {
      troubles.add('sync', firstWords().unread);
      return null;
    });

  async function start(now: string): Promise<(() => Promise<void>) | null> {
    const syncing = await part();
    return syncing ? syncing.exchangeValues(world, now) : null;
  }

  async function end(was: string, ended: typeof stop): Promise<void> {
    await (
      await ended
    )?.();
    await (await part())?.takeBack(world, was);
  }

  effect(() => {
    const { sync } = library.settings.value.logbook;
    if (sync === name) return;
    if (name !== null) void end(name, stop);
    stop = sync === null ? null : start(sync);
    name = sync;
  });
}
