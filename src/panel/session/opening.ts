// What is stored, read when a session opens: all of it before anything else is done, but for a sweep under way, which does not wait
// until a large logbook has been read.
import type { Contents } from '../../logbook/stored.ts';
import { readWords } from '../../words/catalogue.ts';
import { firstWords } from '../../words/first.ts';
import type { Changes } from './changes.ts';
import type * as DeskPart from './desk.ts';
import type { Stages } from './howFar.ts';
import type { Keeper } from './keeper.ts';
import type { LibraryStore } from './library.ts';
import type { Live } from './live.ts';
import type { Ports } from './ports.ts';
import type { Mishaps } from './troubles.ts';
import { watchLanguages } from './watchLanguages.ts';

interface World extends Ports {
  readonly keeper: Keeper;
  readonly library: LibraryStore;
  readonly live: Live;
  readonly troubles: Mishaps;
  readonly reading: Stages;
  readonly changes: Changes;
  /** The part that knows what is stored is there, before anything is taken in. */
  readonly has: (part: typeof DeskPart) => void;
}

export interface Opening {
  /** All of it has been read. */
  readonly whole: Promise<void>;
  /** What is needed first has been read. */
  readonly ready: Promise<void>;
}

export function openStored(world: World): Opening {
  const { library, live, troubles, reading, changes, has } = world;
  let languages: Promise<void> | null = null;
  let soon = (): void => undefined;
  const wentOn = new Promise<void>((done) => {
    soon = done;
  });

  async function read(): Promise<void> {
    const letIn = changes.hold();
    await readHeld().finally(() => letIn());
  }

  async function readHeld(): Promise<void> {
    const [part] = await Promise.all([import('./desk.ts'), readWords('kit', 'session', 'store', 'spoken', 'sweep', 'trouble')]).catch(() => [null]);
    let going: Promise<void> | null = null;
    const stop = reading.share.subscribe((share) => void (part && share !== null && (going ??= goOn(part))));
    const contents = part ? await part.load(world, () => void read()).catch(() => unread()) : unread();
    stop();
    await going;
    reading.over();
    if (!part || contents === null) return;
    await takeIn(part, contents);
    part.watchSync(world);
    part.watchRoute({ ...world, ...live, ...library });
    await live.adopt(contents.live);
  }

  /** With the sweep under way, if there is one. */
  async function goOn(part: typeof DeskPart): Promise<void> {
    const contents = await part.loadLive(world);
    if (contents === null || library.isFilled()) return;
    await takeIn(part, contents);
    await live.adopt(contents.live);
    if (live.role.peek() === 'owner') soon();
  }

  async function takeIn(part: typeof DeskPart, contents: Contents): Promise<void> {
    has(part);
    library.take(contents);
    await (languages ??= watchLanguages(world));
  }

  /** A part of the panel that reading needs is not there: nothing stored has been touched. */
  function unread(): null {
    troubles.add('reading', firstWords().unread);
    return null;
  }

  const whole = read();
  return { whole, ready: Promise.race([whole, wentOn]) };
}
