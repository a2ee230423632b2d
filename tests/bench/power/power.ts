// The browser is killed again and again, at random moments of mixed work: what the panel had acknowledged must be there at the next start.
// The count is kept in a file and goes on from there: `--kills` says how many there are to be of this build, `--record` where they stand.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { most, least, shown, type Family, type Figure } from '../figure.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { createDesk, type Desk } from './desk.ts';
import { letGoOfLeftovers } from './leftovers.ts';
import { BROWSERS, type BrowserName } from './place.ts';
import { addKill, readKills, type Kill } from './record.ts';
import type { Work } from './work.ts';
import { WORKS } from './works/works.ts';

const KILLS = 24;
const RECORD = 'node_modules/.cache/power.jsonl';
/** The seed of the kill of this number is so much more. */
const FIRST_SEED = 20_261_129;
/** A start of Firefox costs several of Chromium: one kill in so many. */
const FIREFOX_EVERY = 10;
/** A profile that only grows would in the end measure its own size. */
const STARTS_A_DESK = 60;
/** At once, since most of the time is spent waiting. */
const LANES = 2;

export const power: Family = {
  name: 'power',
  needs: ['chromium', 'firefox'],
  async run({ kills: wanted = KILLS, record: file = RECORD, tell }) {
    letGoOfLeftovers();
    // The driver of the browsers would take it for itself alone.
    process.once('SIGTERM', () => process.exit(143));
    const build = buildNow();
    const before = readKills(file);
    const known = before.filter((kill) => kill.build === build);
    tell(`${known.length} kills of this build, ${build}, stand in ${file}; ${wanted} are wanted`);
    const all = [...known];
    let next = Math.max(0, ...before.map(({ kill }) => kill));
    const count = (kill: Kill): void => {
      addKill(file, kill);
      all.push(kill);
      if (kill.lost.length > 0) tell(`lost at kill ${kill.kill}, seed ${kill.seed}, ${kill.work} in ${kill.browser}: ${kill.lost.join('; ')}`);
      if (kill.stuck !== null) tell(`stuck at kill ${kill.kill}, seed ${kill.seed}, ${kill.work} in ${kill.browser}: ${kill.stuck}`);
      if (all.length % 25 === 0) tell(`${all.length} kills`);
    };
    const last = next + wanted - known.length;
    /** Kills one after another, each on a desk that no other lane has. */
    async function lane(): Promise<void> {
      const desks = new Map<string, Desk>();
      while (next < last) {
        next += 1;
        const kill = next;
        const seed = FIRST_SEED + kill;
        const browser: BrowserName = kill % FIREFOX_EVERY === 0 ? 'firefox' : 'chromium';
        const work = workOf(seed);
        const place = `${browser} ${work.desk}`;
        const desk = desks.get(place) ?? createDesk(browser, count);
        desks.set(place, desk);
        await desk.live(work, { kill, seed, build });
        if (desk.starts() < STARTS_A_DESK) continue;
        desks.delete(place);
        await desk.close();
      }
      for (const desk of desks.values()) await desk.close();
    }
    await Promise.all(Array.from({ length: LANES }, lane));
    return figuresOf(all, wanted);
  },
};

/** Drawn apart from the moment of the kill, which has the same seed. */
function workOf(seed: number): Work {
  const work = WORKS[Math.floor(WORKS.length * seededRandom(~seed)())];
  if (!work) throw new Error('There is no work.');
  return work;
}

function figuresOf(kills: readonly Kill[], wanted: number): Figure[] {
  const seeds = kills.map(({ seed }) => seed);
  const among = (name: string, is: (kill: Kill) => boolean): Figure => shown(name, kills.filter(is).length);
  return [
    least('kills', kills.length, wanted),
    most('acknowledged events lost', sum(kills.map(({ lost }) => lost.length)), 0),
    most('works that went no further by themselves', kills.filter(({ stuck }) => stuck !== null).length, 0),
    shown('acknowledged events', sum(kills.map(({ acknowledged }) => acknowledged))),
    shown('looks for an acknowledged event after a kill', sum(kills.map(({ standing }) => standing))),
    ...BROWSERS.map((browser) => among(`kills in ${browser}`, (kill) => kill.browser === browser)),
    ...[...new Set(WORKS.map(({ name }) => name))].map((name) => among(`kills in ${name}`, ({ work }) => work === name)),
    among('kills within 40 ms of a press', ({ cut }) => cut.from === 'press'),
    among('kills within 40 ms of an acknowledgement', ({ cut }) => cut.from === 'acknowledgement'),
    shown('first seed', Math.min(...seeds)),
    shown('last seed', Math.max(...seeds)),
  ];
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

/** The panel as it was built, in short: both lists of its scripts, which are named by what is in them. */
function buildNow(): string {
  const hash = createHash('sha256');
  for (const browser of BROWSERS) hash.update(readFileSync(`dist/${browser}.json`));
  return hash.digest('hex').slice(0, 8);
}
