// What a sweep understands at this moment: the words (each also a key and a button) and what the one switch would mean.
// The screens show exactly this, and the recogniser listens for nothing else.
import type { Asked, Press, Word } from './inputs.ts';
import type { Phase, SweepState } from './state.ts';
import { toEnter } from './toEnter.ts';
import { isUndoable } from './undoable.ts';

/**
 * What one press would tell. `failed` is the switch's own way to say that the light failed, without saying how; `turned` says
 * that the focus was set aside as asked, as `shifted` does; `next lens` is what "next" means at a result.
 */
export type PressMeaning = Exclude<Word, 'set'> | 'failed' | 'turned' | 'next lens';

/** `kept, double`: a long press that begins the hold, and then two presses. */
export type Gesture = Press | 'kept, double';

export interface Understood {
  readonly words: readonly Word[];
  readonly presses: readonly { readonly press: Gesture; readonly means: PressMeaning }[];
}

/** The inputs that make sense in the present phase, the most wanted first; `asked`: what the person was asked last. */
export const understood = (state: SweepState, asked: Asked | null = null): Understood => ({
  words: wordsIn(state),
  presses: pressesIn(state, state.phase.name, asked),
});

/**
 * Practice has no live view in which the focus could be seen to have shifted, and no camera to enter a value in; undo is only
 * there where it finds something.
 */
export function pressesIn(state: SweepState, during: Phase['name'], asked: Asked | null = null): Understood['presses'] {
  if (during === 'holding' && asked?.about === 'kept' && isStanding(asked, state) && isUndoableBefore(state)) return KEPT;
  const unfit: Partial<Record<PressMeaning, boolean>> = {
    shifted: during === 'offered' && state.plan.practice !== null,
    entered: !isToBeEntered(state),
    undo: !isUndoable(state),
  };
  return PRESSES[during].filter(({ means }) => !unfit[means]);
}

/** Is the hold that the question is about still under way? */
export const isStanding = ({ hold }: Asked, { phase }: SweepState): boolean => phase.name === 'holding' && phase.since === hold;

/** Was anything done before the hold under way that undo takes back? */
export const isUndoableBefore = ({ journal, phase }: SweepState): boolean =>
  isUndoable({
    journal:
      phase.name === 'holding'
        ? journal.slice(
            0,
            journal.findLastIndex(({ did }) => did === 'began'),
          )
        : journal,
  });

/** Did the sweep find a value to enter in a real camera? */
export const isToBeEntered = ({ phase, plan, troubles }: Pick<SweepState, 'phase' | 'plan' | 'troubles'>): boolean =>
  phase.name === 'finished' && plan.practice === null && toEnter(phase.outcome, troubles) !== null;

/** What the one switch means in each phase; the plainest press has the commonest meaning. */
export const PRESSES: Record<Phase['name'], Understood['presses']> = {
  dialling: [
    { press: 'short', means: 'holding' },
    { press: 'kept, double', means: 'undo' },
  ],
  holding: [
    { press: 'short', means: 'flicker' },
    { press: 'double', means: 'delayed' },
    { press: 'long', means: 'nothing' },
  ],
  judging: [
    { press: 'short', means: 'solid' },
    { press: 'long', means: 'failed' },
  ],
  offered: [
    { press: 'short', means: 'accept' },
    { press: 'double', means: 'shifted' },
    { press: 'long', means: 'go on' },
  ],
  paused: [{ press: 'short', means: 'resume' }],
  checking: [
    { press: 'short', means: 'same' },
    { press: 'long', means: 'shifted' },
  ],
  turning: [{ press: 'short', means: 'turned' }],
  finished: [
    { press: 'short', means: 'repeat' },
    { press: 'double', means: 'next lens' },
    { press: 'long', means: 'entered' },
  ],
};

/** A hold begun by a long press: the switch takes back what came before it. */
const KEPT: Understood['presses'] = PRESSES.holding.map((one) => (one.press === 'double' ? { press: 'double', means: 'undo' } : one));

const wordsIn = (state: SweepState): readonly Word[] => {
  const words = wordsOf(state);
  return isUndoable(state) ? words : words.filter((word) => word !== 'undo');
};

function wordsOf(state: SweepState): readonly Word[] {
  const { phase, plan, journal } = state;
  const lights = ['solid', 'delayed', 'flicker', 'nothing'] as const;
  const signs = plan.arrows === 'absent' ? [] : (['left', 'right', 'balanced', 'lopsided'] as const);
  /** Right after a verdict the arrows may still be told. */
  const complete = journal.at(-1)?.did === 'judged' ? signs : [];
  switch (phase.name) {
    case 'dialling':
      return ['holding', ...complete, 'set', 'skip', 'undo', 'repeat', 'pause', 'finish', 'far view', 'help'];
    case 'holding':
    case 'judging':
      return [...lights, ...signs, 'undo', 'repeat', 'pause', 'finish', 'far view', 'help'];
    case 'offered':
      return ['accept', 'go on', ...(plan.practice ? [] : (['shifted'] as const)), ...complete, 'set', 'skip', 'undo', 'repeat', 'pause', 'far view', 'help'];
    case 'paused':
      return ['resume', 'undo', 'repeat', 'finish', 'far view', 'help'];
    case 'checking':
      return ['same', 'shifted', 'undo', 'repeat', 'finish', 'far view', 'help'];
    case 'turning':
      return ['shifted', 'undo', 'repeat', 'finish', 'far view', 'help'];
    case 'finished':
      return [...(isToBeEntered(state) ? (['entered'] as const) : []), 'next', 'undo', 'repeat', 'far view', 'help'];
  }
}
