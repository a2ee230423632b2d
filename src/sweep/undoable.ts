// What a person may take back. The screen, the switch and the words offer undo only where there is such a thing.
import type { SweepEvent } from './event.ts';
import type { SweepState } from './state.ts';

/** The rest is clockwork that goes with it. */
const TAKEN_BACK: readonly SweepEvent['did'][] = ['began', 'judged', 'chose', 'skipped', 'checked', 'went on', 'finished', 'paused'];

/** Where in the standing journal the last thing lies that can be taken back; -1 where there is none. */
export const lastUndoable = ({ journal }: Pick<SweepState, 'journal'>): number => journal.findLastIndex(({ did }) => TAKEN_BACK.includes(did));

export const isUndoable = (state: Pick<SweepState, 'journal'>): boolean => lastUndoable(state) >= 0;
