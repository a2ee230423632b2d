// What a press of the one switch means, by the phase in which it went down. One switch is enough for a whole sweep: it
// begins, grades, accepts and takes back.
import type { SweepEvent } from './event.ts';
import type { Input, Meaning, Press } from './inputs.ts';
import type { SweepState } from './state.ts';
import type { Light } from './verdict.ts';
import type { Moment } from '../units.ts';

/** How a press grades the light during a hold, and after its end. */
const DURING: Record<Press, Light> = { short: 'flicker', double: 'late', long: 'dark' };
const AFTER: Record<Press, Light> = { short: 'steady', double: 'steady', long: 'untold' };
const by = 'switch';

export function pressed({ press, during, downAt }: Extract<Input, { told: 'press' }>, state: SweepState, now: Moment): Meaning {
  const { phase } = state;
  const long = press === 'long';
  switch (during) {
    case 'dialling':
      return long ? undo() : began();
    case 'holding':
      return judged(DURING[press]);
    case 'judging':
      return judged(AFTER[press]);
    case 'offered':
      return whileIn('offered', long ? { did: 'went on', at: now, by } : { did: 'finished', at: now, by });
    case 'paused':
      return long ? { means: 'nothing' } : whileIn('paused', { did: 'resumed', at: now, by });
    case 'checking':
      return whileIn('checking', { did: 'checked', at: now, focus: long ? 'moved' : 'unmoved', by });
    case 'finished':
      return { means: 'nothing' };
  }

  /** The hold begins when the switch goes down, before anyone can know how long it will stay there. */
  function began(): Meaning {
    return phase.name === 'dialling'
      ? { means: 'events', events: [{ did: 'began', at: downAt, value: phase.next.value, by }] }
      : { means: 'nothing' };
  }

  /** A long press takes back the hold that its own beginning started, and then what it was meant for. */
  function undo(): Meaning {
    const undid: SweepEvent = { did: 'undid', at: now, by };
    const ownHold = phase.name === 'holding' && phase.since === downAt;
    return { means: 'events', events: ownHold ? [undid, undid] : [undid] };
  }

  /** The hold counts as ended when the switch went down. */
  function judged(light: Light): Meaning {
    const same = (phase.name === 'holding' || phase.name === 'judging') && phase.since <= downAt;
    if (!same) return { means: 'nothing' };
    return { means: 'events', events: [{ did: 'judged', at: downAt, verdict: { light, arrows: 'none' }, by, heard: null }] };
  }

  function whileIn(name: typeof phase.name, event: SweepEvent): Meaning {
    return phase.name === name ? { means: 'events', events: [event] } : { means: 'nothing' };
  }
}
