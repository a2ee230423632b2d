// Taking back the last thing the person did, and telling the arrows of a hold after its light. Both rewrite the end of
// the standing journal and add it up again; the journal on disk keeps everything as it happened.
import { currentPrompt } from './currentPrompt.ts';
import type { Opened, SweepEvent } from './event.ts';
import type { SweepState } from './state.ts';
import { refused, say, sound, type Move } from './step.ts';
import { dial } from './turn.ts';
import { lastUndoable } from './undoable.ts';

type Did<Name extends SweepEvent['did']> = Extract<SweepEvent, { did: Name }>;
type AddUp = (journal: readonly [Opened, ...SweepEvent[]]) => SweepState;

/**
 * Takes back the last verdict or choice, or drops the hold under way. Never lands in the middle of a hold: nobody is
 * pressing any more, so one that was interrupted is asked for from its beginning.
 */
export function undid(state: SweepState, event: Did<'undid'>, addUp: AddUp): Move {
  const last = lastUndoable(state);
  if (last < 0) return { state, effects: [sound('refused'), say({ say: 'nothing to undo' })] };
  const then = addUp(upTo(state, last));
  const before = isHeld(then) ? addUp(upTo(state, beginningOf(state, last))) : then;
  const { phase } = before;
  const after = phase.name === 'dialling' ? dial(before, phase.next, say({ say: 'undone', next: phase.next })) : null;
  const effects = after?.effects ?? [say(currentPrompt(before, event.at))];
  return { state: before, effects: [{ do: 'keep', event }, { do: 'clear alarms' }, ...effects] };
}

const isHeld = ({ phase }: SweepState): boolean => phase.name === 'holding' || phase.name === 'judging';

/** Tells the arrows of the hold just judged: its verdict is judged again with them. */
export function amended(state: SweepState, event: Did<'amended'>, addUp: AddUp, judge: (before: SweepState, verdict: Did<'judged'>) => Move): Move {
  const last = state.journal.at(-1);
  if (state.plan.arrows === 'absent') return refused(state, 'no arrows');
  if (last?.did !== 'judged') return refused(state, 'hold first');
  const before = addUp(upTo(state, state.journal.length - 1));
  const again = judge(before, { ...last, verdict: { ...last.verdict, arrows: event.arrows } });
  return { state: again.state, effects: again.effects.map((effect) => (effect.do === 'keep' ? { do: 'keep', event } : effect)) };
}

/** Where the hold that was under way at `last` began. */
const beginningOf = ({ journal }: SweepState, last: number): number => journal.findLastIndex(({ did }, index) => did === 'began' && index < last);

function upTo({ journal }: SweepState, end: number): [Opened, ...SweepEvent[]] {
  const [opened, ...rest] = journal.slice(0, Math.max(1, end));
  return [opened as Opened, ...rest];
}
