// One profile with everything that was acknowledged in it, from start to start: each is looked through before the next work begins.
import { seededRandom } from '../../../src/practice/random.ts';
import type { Seat } from '../../e2e/seat.ts';
import { removeFolder, temporaryFolder } from '../../e2e/temporary.ts';
import { FIRST_STORE } from './firstStore.ts';
import { createFuse, drawCut, type Fuse } from './fuse.ts';
import { readKept, type Kept } from './kept.ts';
import { createLedger } from './ledger.ts';
import { open, type BrowserName, type Place } from './place.ts';
import type { Kill } from './record.ts';
import type { Life, Work } from './work.ts';

type Draft = Omit<Kill, 'lost'>;

/** The browser with either the panel or what lies beside it, and all that was kept. */
interface Arrived {
  readonly place: Place;
  readonly beside: Pick<Seat, 'evaluate'> | null;
  readonly seat: Seat | null;
  readonly before: Kept;
}

/** No work: the panel is opened for what it has kept. */
const LOOKING: Work = { name: 'looking', desk: 'logbook', lasts: 0, presses: 0, acknowledges: 0, go: () => Promise.resolve() };

export interface Desk {
  /** So many starts it has seen. */
  readonly starts: () => number;
  /** Starts the browser, works in it and kills it. */
  live(work: Work, kill: Pick<Kill, 'kill' | 'seed' | 'build'>): Promise<void>;
  /** Looks through what the last kill has left, and takes the profile away. */
  close(): Promise<void>;
}

const profiles = new Set<string>();
// Also where the bench itself is cut off.
process.once('exit', () => profiles.forEach(removeFolder));

/** `count`: told each kill as soon as the start after it was looked through. */
export function createDesk(browser: BrowserName, count: (kill: Kill) => void): Desk {
  const profile = temporaryFolder();
  profiles.add(profile);
  const ledger = createLedger();
  let starts = 0;
  let last: Draft | null = null;

  const lookThrough = (kept: Kept): void => {
    const lost = ledger.lost(kept);
    if (last) count({ ...last, lost });
    last = null;
    // Told once; what is gone is not held against the kills to come.
    ledger.drop((what) => lost.includes(what));
  };

  async function start(): Promise<Place> {
    const place = await open(browser, profile);
    if (starts > 0) {
      starts += 1;
      return place;
    }
    const beside = await place.beside();
    await beside.evaluate((all) => ((globalThis as { browser?: typeof chrome }).browser ?? chrome).storage.local.set(all), FIRST_STORE);
    starts = 1;
    return place;
  }

  /** On a busy machine a browser may not come at once; one that never comes ends the bench, and its profile is left to be looked at. */
  async function arrive(work: Work, tries = 3): Promise<Arrived> {
    let place: Place | null = null;
    try {
      place = await start();
      const beside = work.before ? await place.beside() : null;
      const seat = beside ? null : await place.panel(work.docked ?? false);
      return { place, beside, seat, before: await (beside ?? (seat as Seat)).evaluate(readKept) };
    } catch (error) {
      await place?.kill();
      if (tries === 1) {
        profiles.delete(profile);
        throw new Error(`After kill ${last?.kill ?? 'none'} ${browser} does not come any more on ${profile}.`, { cause: error });
      }
      return arrive(work, tries - 1);
    }
  }

  async function live(work: Work, { kill, seed, build }: Pick<Kill, 'kill' | 'seed' | 'build'>): Promise<void> {
    const random = seededRandom(seed);
    const cut = drawCut(random, work);
    const fuse = createFuse(cut);
    const { place, beside, seat, before } = await arrive(work);
    lookThrough(before);
    let acknowledged = 0;
    const life: Life = {
      random,
      ledger,
      number: kill,
      before,
      pressed: fuse.pressed,
      acknowledged(fact) {
        acknowledged += 1;
        ledger.hold(fact);
        fuse.acknowledged();
      },
    };
    const going = goOn(work, life, place, fuse, beside, seat);
    const stuck = await Promise.race([fuse.blown.then(() => null), going.then((why) => why ?? fuse.blown.then(() => null))]);
    await place.kill();
    // What the browser had said before it went is still heard.
    await Promise.race([going, new Promise((go) => setTimeout(go, 1000))]);
    last = { kill, seed, browser, work: work.name, cut, acknowledged, standing: ledger.standing(), stuck, build };
  }

  return {
    starts: () => starts,
    live,
    async close() {
      const { place, before } = await arrive(LOOKING);
      lookThrough(before);
      await place.kill();
      removeFolder(profile);
      profiles.delete(profile);
    },
  };
}

/** Works until it is done, or why it went no further. */
async function goOn(work: Work, life: Life, place: Place, fuse: Fuse, beside: Pick<Seat, 'evaluate'> | null, seat: Seat | null): Promise<string | null> {
  try {
    if (beside) await work.before?.(life, beside, place);
    fuse.begin();
    await work.go(life, seat ?? (await place.panel(work.docked ?? false)));
    return null;
  } catch (error) {
    return String(error).slice(0, 600);
  }
}
