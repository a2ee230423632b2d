// One hold, from the half-press to its verdict. A steady light is credited only when the full hold time has run; any
// failing verdict ends the hold at once.
import { weigh } from './belief/belief.ts';
import type { NotNow } from './effect.ts';
import type { SweepEvent } from './event.ts';
import type { Hold } from './hold.ts';
import { isOnScale } from './scale.ts';
import type { Phase, SweepState } from './state.ts';
import { ignored, refused, say, sound, taken, wake, type Move } from './step.ts';
import { dial, enter, turn } from './turn.ts';
import { read } from './verdict.ts';
import { between, seconds, type Moment } from '../units.ts';

type Did<Name extends SweepEvent['did']> = Extract<SweepEvent, { did: Name }>;
type UnderWay = Extract<Phase, { name: 'holding' | 'judging' }>;

/** A timer may ring this much early without a hold being cut short by anything a person could see. */
const TIMER_SLACK = 0.05;
/** How long the panel waits for an answer before it asks once more, and then for the hold again. */
const TO_ANSWER = seconds(6);
const ASKS = 1;

/** The half-press begins: at the suggested value, or at one the person has just set. */
export function began(state: SweepState, event: Did<'began'>): Move {
  const { phase, plan } = state;
  if (phase.name !== 'dialling' && phase.name !== 'offered') return refused(state, notNowFor(phase));
  if (!isOnScale(plan.scale, event.value)) return refused(state, 'off the scale');
  const next = phase.next.value === event.value ? phase.next : ({ value: event.value, reason: { because: 'yours' } } as const);
  const holding = enter({ ...state, dialled: event.value }, { name: 'holding', next, since: event.at }, [
    sound('begin'),
    wake('hold time', plan.manner.holdTime),
  ]);
  return taken(holding.state, event, holding.effects);
}

/** The hold time has run and nothing failed: the end tone, and the question whether it held. */
export function ran(state: SweepState, event: Did<'ran'>): Move {
  const { phase } = state;
  if (phase.name !== 'holding' || left(state, phase, event.at) > TIMER_SLACK) return ignored(state);
  const judging = enter(state, { name: 'judging', next: phase.next, since: phase.since, asked: 0 }, [sound('end'), wake('answer', TO_ANSWER)]);
  return taken(judging.state, event, judging.effects);
}

/** A verdict on the hold under way. */
export function judged(state: SweepState, event: Did<'judged'>): Move {
  const { phase, plan } = state;
  if (phase.name !== 'holding' && phase.name !== 'judging') return refused(state, notNowFor(phase));
  const reading = read(event.verdict, plan.arrows);
  const toGo = left(state, phase, event.at);
  if (reading.counts === 'in' && phase.name === 'holding' && toGo > TIMER_SLACK) {
    return { state, effects: [sound('refused'), say({ say: 'too early', left: seconds(toGo) })] };
  }
  const { belief, predictive } = weigh(state.asOneBand, phase.next.value, reading);
  const { by, heard, verdict, at } = event;
  const hold: Hold = { value: phase.next.value, verdict, reading, began: phase.since, ended: at, by, heard, predictive };
  const known = { ...state, asOneBand: belief, holds: [...state.holds, hold], skipped: [] };
  const after = turn(known, at, hold);
  return taken(after.state, event, [sound('noted'), ...after.effects]);
}

/** Silence after the end tone: asked once more, then the hold itself is asked for again. Nothing is ever assumed. */
export function unanswered(state: SweepState, event: Did<'unanswered'>): Move {
  const { phase } = state;
  if (phase.name !== 'judging') return ignored(state);
  if (phase.asked >= ASKS) return holdAgain(state, event, phase, 'unanswered');
  const { value } = phase.next;
  const asking = enter(state, { ...phase, asked: phase.asked + 1 }, [say({ say: 'did it hold', value }), wake('answer', TO_ANSWER)]);
  return taken(asking.state, event, asking.effects);
}

/** The hold under way does not count: the same value is asked for again. */
export function holdAgain(state: SweepState, event: SweepEvent, phase: UnderWay, why: 'unanswered' | 'cut off'): Move {
  const again = dial(state, phase.next, say({ say: 'hold again', value: phase.next.value, why }));
  return taken(again.state, event, again.effects);
}

/** Seconds of the hold still to run. */
const left = ({ plan }: SweepState, { since }: UnderWay, at: Moment): number => plan.manner.holdTime - between(since, at);

/** Why a hold cannot begin or be judged in this phase. */
export function notNowFor(phase: Phase): NotNow {
  switch (phase.name) {
    case 'dialling':
    case 'offered':
      return 'hold first';
    case 'holding':
      return 'hold under way';
    case 'judging':
      return 'answer first';
    case 'paused':
      return 'paused';
    case 'checking':
      return 'check focus first';
    case 'turning':
      return 'turn first';
    case 'finished':
      return 'finished';
  }
}
