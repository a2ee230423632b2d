// What a sweep understands at this moment: the words (each also a key and a button) and what the one switch would mean.
// The screens show exactly this, and the recogniser listens for nothing else.
import type { Press, Word } from './inputs.ts';
import type { SweepState } from './state.ts';

/** What one press would tell; `failed` is the switch's own way to say that the light failed, without saying how. */
export type PressMeaning = Exclude<Word, 'set'> | 'failed';

export interface Understood {
  readonly words: readonly Word[];
  readonly presses: readonly { readonly press: Press; readonly means: PressMeaning }[];
}

/** The inputs that make sense in the present phase, the most wanted first. */
export function understood({ phase, plan, journal }: SweepState): Understood {
  const arrows = plan.arrows !== 'absent';
  const lights = ['solid', 'delayed', 'flicker', 'nothing'] as const;
  const signs = arrows ? (['left', 'right', 'balanced', 'lopsided'] as const) : [];
  /** Right after a verdict the arrows may still be told. */
  const complete = journal.at(-1)?.did === 'judged' ? signs : [];
  switch (phase.name) {
    case 'dialling':
      return {
        words: ['holding', ...complete, 'set', 'skip', 'undo', 'repeat', 'pause', 'finish', 'help'],
        presses: [
          { press: 'short', means: 'holding' },
          { press: 'long', means: 'undo' },
        ],
      };
    case 'holding':
      return {
        words: [...lights, ...signs, 'undo', 'repeat', 'pause', 'finish', 'help'],
        presses: [
          { press: 'short', means: 'flicker' },
          { press: 'double', means: 'delayed' },
          { press: 'long', means: 'nothing' },
        ],
      };
    case 'judging':
      return {
        words: [...lights, ...signs, 'undo', 'repeat', 'pause', 'finish', 'help'],
        presses: [
          { press: 'short', means: 'solid' },
          { press: 'long', means: 'failed' },
        ],
      };
    case 'offered':
      return {
        words: ['accept', 'go on', ...complete, 'set', 'skip', 'undo', 'repeat', 'pause', 'help'],
        presses: [
          { press: 'short', means: 'accept' },
          { press: 'long', means: 'go on' },
        ],
      };
    case 'paused':
      return { words: ['resume', 'undo', 'repeat', 'finish', 'help'], presses: [{ press: 'short', means: 'resume' }] };
    case 'checking':
      return {
        words: ['same', 'shifted', 'undo', 'repeat', 'finish', 'help'],
        presses: [
          { press: 'short', means: 'same' },
          { press: 'long', means: 'shifted' },
        ],
      };
    case 'finished':
      return { words: ['undo', 'repeat', 'help'], presses: [] };
  }
}
