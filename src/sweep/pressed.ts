// What a press of the one switch comes to: its meaning in the phase in which it went down, as events of now. One switch
// is enough for a whole sweep: it begins, grades, accepts and takes back.
import type { SweepEvent } from './event.ts';
import type { Input, Meaning } from './inputs.ts';
import type { Phase, SweepState } from './state.ts';
import { pressesIn } from './understood.ts';
import type { Light } from './verdict.ts';
import type { Moment } from '../units.ts';

const by = 'switch';
const NOTHING: Meaning = { means: 'nothing' };

export function pressed({ press, during, downAt }: Extract<Input, { told: 'press' }>, state: SweepState, at: Moment): Meaning {
  const { phase } = state;
  const means = pressesIn(state, during).find((one) => one.press === press)?.means;
  switch (means) {
    case 'holding':
      return phase.name === 'dialling' ? events({ did: 'began', at: downAt, value: phase.next.value, by }) : NOTHING;
    case 'undo':
      return undo(phase, downAt, { did: 'undid', at, by });
    case 'solid':
      return judged(phase, downAt, 'steady');
    case 'delayed':
      return judged(phase, downAt, 'late');
    case 'flicker':
      return judged(phase, downAt, 'flicker');
    case 'nothing':
      return judged(phase, downAt, 'dark');
    case 'failed':
      return judged(phase, downAt, 'untold');
    case 'accept':
      return whileIn('offered', { did: 'finished', at, by });
    case 'go on':
      return whileIn('offered', { did: 'went on', at, by });
    case 'resume':
      return whileIn('paused', { did: 'resumed', at, by });
    case 'same':
      return whileIn('checking', { did: 'checked', at, focus: 'unmoved', by });
    case 'shifted':
      return whileIn(during === 'offered' ? 'offered' : 'checking', { did: 'checked', at, focus: 'moved', by });
    case 'turned':
      return whileIn('turning', { did: 'checked', at, focus: 'moved', by });
    case 'repeat':
    case 'entered':
    case 'next lens':
      return phase.name === 'finished' ? { means } : NOTHING;
    default:
      return NOTHING;
  }

  function whileIn(name: Phase['name'], event: SweepEvent): Meaning {
    return phase.name === name ? events(event) : NOTHING;
  }
}

/** A long press takes back the hold that its own beginning started, and then what it was meant for. */
function undo(phase: Phase, downAt: Moment, undid: SweepEvent): Meaning {
  return phase.name === 'holding' && phase.since === downAt ? events(undid, undid) : events(undid);
}

/** The hold counts as ended when the switch went down; a press about a hold that is over means nothing. */
function judged(phase: Phase, downAt: Moment, light: Light): Meaning {
  const same = (phase.name === 'holding' || phase.name === 'judging') && phase.since <= downAt;
  return same ? events({ did: 'judged', at: downAt, verdict: { light, arrows: 'none' }, by, heard: null }) : NOTHING;
}

const events = (...all: readonly SweepEvent[]): Meaning => ({ means: 'events', events: all });
