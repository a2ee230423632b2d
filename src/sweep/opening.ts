// How a sweep opens, and how a series opens within it: what is believed before the first hold, and where it starts.
import { openBelief } from './belief/belief.ts';
import type { Opened } from './event.ts';
import type { Plan } from './plan.ts';
import { say, taken, type Move } from './step.ts';
import { asideOpening, isTransfer } from './transfer/joint.ts';
import { dial, enter, look, turnTheFocus } from './turn.ts';

/** The first state of a sweep, from the event that opens its journal. */
export function openSweep(opened: Opened): Move {
  const { id, plan } = opened;
  const belief = openingBelief(plan);
  const blank = {
    id,
    plan,
    holds: [],
    spent: [],
    belief,
    asOneBand: belief,
    stories: [],
    dialled: plan.start,
    skipped: [],
    trustedUpTo: 0,
    troubles: [],
    journal: [],
  };
  const { next } = look(blank);
  const { state, effects } = plan.transfer
    ? enter(blank, { name: 'turning', way: 'first', next }, [say(turnTheFocus(plan, 'first', null))])
    : dial(blank, next, say({ say: 'opening', next }));
  return taken(state, opened, effects);
}

/** The belief a series starts from: what the logbook remembers, or the plain prior; in a width transfer, what the first series left. */
export const openingBelief = (plan: Plan) =>
  isTransfer(plan) ? asideOpening(plan) : openBelief(plan.scale, plan.arrows !== 'absent', plan.memory, plan.lapse);
