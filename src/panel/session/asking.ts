// Asks about a press that may be meant for the camera's button.
import type { ReadonlySignal } from '@preact/signals';
import type { Asked } from '../../sweep/inputs.ts';
import type { SweepState } from '../../sweep/state.ts';
import { isStanding, isUndoableBefore } from '../../sweep/understood.ts';
import { readWords, saidAndShown, words } from '../../words/catalogue.ts';
import type { FirstHoldWords } from '../../words/firstHoldWords.ts';
import type { Carrier } from './carrier.ts';

export async function ask(about: Asked, sweep: ReadonlySignal<SweepState | null>, carrier: Carrier): Promise<void> {
  await readWords('firstHold');
  const state = sweep.peek();
  if (!state || !isStanding(about, state)) return;
  carrier.tell(saidAndShown('firstHold', (say) => askedInWords(about, state, say)));
}

/** The question, once its words have been read. */
export function askedInWords({ about }: Asked, state: SweepState, { asked }: FirstHoldWords = words('firstHold')): string {
  return about === 'kept' ? asked.kept(isUndoableBefore(state)) : asked[about];
}
