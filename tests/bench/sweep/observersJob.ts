// Whole sweeps of other observers through the reducer, in a process of its own. Asked about the focus, the person looks,
// finds it where it was and goes on.
import type { Care } from '../../../src/sweep/care.ts';
import { OTHER_OBSERVERS } from './otherObservers.ts';
import { sweeper } from './reducerSweep.ts';

export interface ObserversRun {
  readonly holds: number;
  readonly seconds: number;
  /** Null where no band came out; otherwise against the true centre half-way through the sweep, and at its end. */
  readonly band: { readonly midway: Against; readonly atEnd: Against; readonly stated: number } | null;
  readonly asked: boolean;
  /** A trouble stood when the finish was offered. */
  readonly doubted: boolean;
  /** The value recommended was itself held. */
  readonly proved: boolean;
}

interface Against {
  readonly covered: boolean;
  readonly error: number;
  /** Of the value chosen. */
  readonly off: number;
}

const [observer, care, from, runs] = process.argv.slice(2);
const found = OTHER_OBSERVERS.find(({ name }) => name === observer);
if (!found) throw new Error(`No observer is called ${observer}.`);
const sweep = sweeper({ care: care as Care, arrows: 'absent', looks: 'go on', scale: found.scale });
const all: ObserversRun[] = [];

for (let run = Number(from); run < Number(from) + Number(runs); run++) {
  const { press, centre } = found.seat(run);
  const { holds, seconds, outcome, ended, state, named } = sweep(press);
  const against = (truth: number): Against | null =>
    outcome.found === 'band'
      ? {
          covered: outcome.interval.from <= truth && truth <= outcome.interval.to,
          error: Math.abs(outcome.centre - truth),
          off: Math.abs(outcome.chosen - truth),
        }
      : null;
  const midway = against(centre(seconds / 2));
  const atEnd = against(centre(seconds));
  all.push({
    holds,
    seconds,
    band: ended === 'offered' && outcome.found === 'band' && midway && atEnd ? { midway, atEnd, stated: outcome.within } : null,
    asked: named.includes('focus moved'),
    doubted: state.troubles.length > 0,
    proved: outcome.found === 'band' && state.holds.some(({ value }) => value === outcome.chosen),
  });
}
console.log(JSON.stringify(all));
