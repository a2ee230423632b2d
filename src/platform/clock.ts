// The time of day for the journal. It runs on the browser's steady clock, so that a correction of the system clock never
// shortens a hold; when the two part for longer than a moment (sleep, a clock set anew) it follows the system again.
import { moment, type Moment } from '../units.ts';

const PARTED = 1000;

let offset = Date.now() - performance.now();

export function now(): Moment {
  const steady = offset + performance.now();
  const system = Date.now();
  if (Math.abs(system - steady) <= PARTED) return moment(Math.round(steady));
  offset = system - performance.now();
  return moment(system);
}
