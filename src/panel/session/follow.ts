// The state of a journal that grows under our eyes: only what is new is added up, the whole of it when it does not
// continue what is known.
import type { Journal, SweepEvent } from '../../sweep/event.ts';
import type { SweepState } from '../../sweep/state.ts';
import { replay, transition } from '../../sweep/transition.ts';

export function followed(known: readonly SweepEvent[], state: SweepState | null, journal: Journal): SweepState {
  const continues = known.length > 0 && known.length <= journal.length && same(known[0], journal[0]) && same(known.at(-1), journal[known.length - 1]);
  if (!state || !continues) return replay(journal);
  return journal.slice(known.length).reduce((before, event) => transition(before, event).state, state);
}

const same = (one: SweepEvent | undefined, other: SweepEvent | undefined): boolean => JSON.stringify(one) === JSON.stringify(other);
