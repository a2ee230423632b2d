// Every row of words that count together: in each phase of a sweep, beside a verdict that has no arrows yet, at a result, and in the
// set-up walk.
import type { Word } from '../../../src/sweep/inputs.ts';
import type { Phase } from '../../../src/sweep/state.ts';
import { understood } from '../../../src/sweep/understood.ts';
import { after, inPhase, later } from '../../sweep/staged.ts';

interface Moment {
  readonly name: string;
  readonly words: readonly Word[];
  /** The logbook may be asked, too. */
  readonly asks: boolean;
}

const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'turning', 'finished'] as const satisfies readonly Phase['name'][];

/** A hold was judged, and its arrows may still be told. */
const judged = after(inPhase('judging'), { did: 'judged', at: later(16), verdict: { light: 'flicker', arrows: 'none' }, by: 'key', heard: null });

const ALL: readonly Moment[] = [
  ...PHASES.map((name) => ({ name, words: understood(inPhase(name)).words, asks: name !== 'holding' && name !== 'judging' })),
  { name: 'after a verdict', words: understood(judged).words, asks: true },
  { name: 'at a result', words: ['entered', 'next', 'undo', 'repeat', 'far view', 'help'], asks: true },
  { name: 'in the set-up walk', words: ['next', 'back', 'repeat'], asks: false },
];

/** Those that are the same as another are left out. */
export const MOMENTS = ALL.filter((moment, at) => ALL.findIndex((one) => one.asks === moment.asks && one.words.join() === moment.words.join()) === at);

export const wordsAt = (moment: string): readonly Word[] => MOMENTS.find(({ name }) => name === moment)?.words ?? [];
