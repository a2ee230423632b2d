// What a press of the one switch comes to: its meaning in the phase in which it went down, as events of now. One switch
// is enough for a whole sweep: it begins, grades, accepts and takes back. It feels like the camera's button, so what may
// have been meant for that is asked about and not booked; a key of its own, a word and a button say what is meant.
import type { SweepEvent } from './event.ts';
import type { Asked, Input, Meaning } from './inputs.ts';
import type { Phase, SweepState } from './state.ts';
import { isStanding, isUndoableBefore, pressesIn } from './understood.ts';
import type { Light } from './verdict.ts';
import { between, seconds, type Moment } from '../units.ts';

/** Nobody has seen what a light does and told it within this time of the half-press. Common practice, no source. */
const TOO_SOON = seconds(0.7);

const by = 'switch';
const NOTHING: Meaning = { means: 'nothing' };

/** `asked`: what the person was asked last. */
export function pressed({ press, during, downAt }: Extract<Input, { told: 'press' }>, state: SweepState, at: Moment, asked: Asked | null): Meaning {
  const { phase } = state;
  const means = pressesIn(state, during, asked).find((one) => one.press === press)?.means;
  if (phase.name === 'holding') {
    const { since } = phase;
    if (press === 'long' && during === 'dialling' && since === downAt) return ask('kept', since);
    const isTooSoon = during === 'holding' && since <= downAt && between(since, downAt) < TOO_SOON;
    if (isTooSoon && means !== 'undo') return ask(press, since);
  }
  switch (means) {
    case 'holding':
      return phase.name === 'dialling' ? events({ did: 'began', at: downAt, value: phase.next.value, by }) : NOTHING;
    case 'undo':
      return undo({ did: 'undid', at, by });
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

  /** Takes back the hold that the long press began, and then what it was meant for. */
  function undo(undid: SweepEvent): Meaning {
    return asked && isStanding(asked, state) && isUndoableBefore(state) ? events(undid, undid) : NOTHING;
  }
}

const ask = (about: Asked['about'], hold: Moment): Meaning => ({ means: 'asked', about: { hold, about } });

/** The hold counts as ended when the switch went down; a press about a hold that is over means nothing. */
function judged(phase: Phase, downAt: Moment, light: Light): Meaning {
  const same = (phase.name === 'holding' || phase.name === 'judging') && phase.since <= downAt;
  return same ? events({ did: 'judged', at: downAt, verdict: { light, arrows: 'none' }, by, heard: null }) : NOTHING;
}

const events = (...all: readonly SweepEvent[]): Meaning => ({ means: 'events', events: all });
