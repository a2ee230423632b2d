// One event in, the next state and its effects out. Pure: time is in the event, nothing is read from outside, and the
// same journal always adds up to the same state. An event that makes no sense in the present phase changes nothing
// and says why.
import { focusChecked, chose, cutOff, finished, paused, resumed, skipped, wentOn } from './aside.ts';
import type { Journal, Opened, SweepEvent } from './event.ts';
import { began, judged, ran, unanswered } from './holding.ts';
import { openSweep } from './opening.ts';
import type { SweepState } from './state.ts';
import { ignored, type Move } from './step.ts';
import { amended, undid } from './undo.ts';

/** Moves a sweep by one event. */
export function transition(state: SweepState, event: SweepEvent): Move {
  switch (event.did) {
    case 'opened':
    case 'heard':
      return ignored(state);
    case 'began':
      return began(state, event);
    case 'ran':
      return ran(state, event);
    case 'judged':
      return judged(state, event);
    case 'amended':
      return amended(state, event, addUp, judged);
    case 'unanswered':
      return unanswered(state, event);
    case 'chose':
      return chose(state, event);
    case 'skipped':
      return skipped(state, event);
    case 'undid':
      return undid(state, event, addUp);
    case 'paused':
      return paused(state, event);
    case 'resumed':
      return resumed(state, event);
    case 'cut off':
      return cutOff(state, event);
    case 'checked':
      return focusChecked(state, event);
    case 'went on':
      return wentOn(state, event);
    case 'finished':
      return finished(state, event);
  }
}

/** The state a journal adds up to. */
const addUp = ([opened, ...rest]: readonly [Opened, ...SweepEvent[]]): SweepState =>
  rest.reduce((state, event) => transition(asItWas(state, event), event).state, openSweep(opened).state);

/** What the question about the focus still takes; nothing else is kept while it stands. */
const WHILE_CHECKING: readonly SweepEvent['did'][] = ['checked', 'undid', 'finished', 'heard', 'cut off'];

/** A journal kept before the holds were judged as they are now: what went on then shows that no question was asked. */
const asItWas = (state: SweepState, { did }: SweepEvent): SweepState =>
  state.phase.name === 'checking' && !WHILE_CHECKING.includes(did) ? { ...state, phase: { name: 'dialling', next: state.phase.next } } : state;

/** The state of a stored journal, whose first event is known to open it. */
export const replay = (journal: Journal): SweepState => addUp(journal as [Opened, ...SweepEvent[]]);
