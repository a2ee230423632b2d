// What is to be measured in one job, in its order, as it is kept on disk. What is done is not kept: the logbook knows,
// so a plan picked up after a break or a crash can never disagree with it.
import * as v from 'valibot';
import { Id } from '../../kit/words.ts';
import { seconds, type Seconds } from '../../units.ts';
import { Moment } from '../../storedUnits.ts';
import { changeBetween, secondsFor, type Change, type Stop } from './changes.ts';

export const JobPlan = v.object({
  /** Measurements from then on count. */
  begun: Moment,
  /** Situations, in the order in which they are to be measured. */
  situations: v.pipe(v.array(Id), v.minLength(1), v.maxLength(500)),
});
export type JobPlan = v.InferOutput<typeof JobPlan>;

interface Station {
  readonly stop: Stop;
  readonly is: 'done' | 'next' | 'to do';
  /** What to change before it, coming from the one above; null for the first. */
  readonly change: Change | null;
}

export interface Progress {
  readonly stations: readonly Station[];
  readonly done: number;
  readonly next: Stop | null;
  /** For what is left, with its changes. */
  readonly left: Seconds;
}

/** A measurement of a situation, by sweep or by hand. */
interface Done {
  readonly situation: string;
  readonly at: Moment;
}

/** Where the plan stands. Situations that are no longer in the kit are left out. */
export function progressOf(plan: JobPlan, stops: readonly Stop[], measured: readonly Done[], perSweep: Seconds): Progress {
  const known = new Map(stops.map((stop) => [stop.id, stop]));
  const listed = plan.situations.flatMap((id) => known.get(id) ?? []);
  const done = new Set(measured.filter(({ at }) => at >= plan.begun).map(({ situation }) => situation));
  const next = listed.find(({ id }) => !done.has(id)) ?? null;
  const stations = listed.map((stop, at): Station => {
    const before = listed[at - 1];
    return { stop, is: done.has(stop.id) ? 'done' : stop === next ? 'next' : 'to do', change: before ? changeBetween(before, stop) : null };
  });
  const left = stations.filter(({ is }) => is !== 'done');
  const spent = left.reduce((sum, { change }) => sum + perSweep + (change ? secondsFor(change) : 0), 0);
  return { stations, done: stations.length - left.length, next, left: seconds(spent) };
}
