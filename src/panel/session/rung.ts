// What an alarm becomes when it rings. One that rings far too late has slept with the computer: nobody was holding.
import type { Alarm } from '../../sweep/effect.ts';
import type { SweepEvent } from '../../sweep/event.ts';
import type { SweepState } from '../../sweep/state.ts';
import { moment, type Moment, type Seconds } from '../../units.ts';

/** A hidden window may ring a second late; that much is no sleep. */
const SLEPT = 2;

export function rung(alarm: Alarm, { phase }: SweepState, due: Moment, now: Moment, late: Seconds): SweepEvent | null {
  const at = moment(Math.max(now, due));
  const slept = late > SLEPT;
  switch (alarm) {
    case 'hold time':
      return slept ? { did: 'cut off', at } : { did: 'ran', at };
    case 'answer':
      return { did: 'unanswered', at };
    case 'dial':
      if (phase.name !== 'dialling') return null;
      return slept ? { did: 'paused', at, by: 'count' } : { did: 'began', at, value: phase.next.value, by: 'count' };
  }
}
