// The sweep's alarms, on timers. They may ring late, in a hidden window by a second, but never early; how late is told,
// so that a hold during which the computer slept can be dropped.
import type { Alarm } from '../sweep/effect.ts';
import { seconds, type Moment, type Seconds } from '../units.ts';
import { now } from './clock.ts';

export interface Alarms {
  /** Rings once at `due`; each kind is set once at a time. */
  set(alarm: Alarm, due: Moment, ring: (late: Seconds) => void): void;
  clear(): void;
}

export function createAlarms(): Alarms {
  const timers = new Map<Alarm, ReturnType<typeof setTimeout>>();
  return {
    set(alarm, due, ring) {
      clearTimeout(timers.get(alarm));
      const wait = Math.max(0, due - now());
      const [steadyDue, systemDue] = [performance.now() + wait, Date.now() + wait];
      const look = (): void => {
        const left = steadyDue - performance.now();
        if (left > 0) {
          timers.set(alarm, setTimeout(look, Math.ceil(left)));
          return;
        }
        timers.delete(alarm);
        ring(seconds(Math.max(0, -left, Date.now() - systemDue) / 1000));
      };
      timers.set(alarm, setTimeout(look, Math.ceil(wait)));
    },
    clear() {
      for (const timer of timers.values()) clearTimeout(timer);
      timers.clear();
    },
  };
}
