// The time of day for the journal. It runs on the browser's steady clock, so that a correction of the system clock never
// shortens a hold; when the two part for longer than a moment (sleep, a clock set anew) it follows the system again, but not
// before a hold under way is over.
import { moment, seconds, type Moment, type Seconds } from '../units.ts';

const PARTED = 1000;

let offset = Date.now() - performance.now();
let isHeld = false;

export function now(): Moment {
  const steady = offset + performance.now();
  const system = Date.now();
  if (isHeld || Math.abs(system - steady) <= PARTED) return moment(Math.round(steady));
  offset = system - performance.now();
  return moment(system);
}

/** How long something that the person did waited until the page was told of it: a busy computer takes its time. */
export const waitOf = ({ timeStamp }: Pick<Event, 'timeStamp'>): Seconds => seconds(Math.max(0, performance.now() - timeStamp) / 1000);

/** From now on time only runs, whatever becomes of the date; or it may follow the date again. */
export function keepSteady(on: boolean): void {
  isHeld = on;
}
