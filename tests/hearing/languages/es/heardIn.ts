// What was heard in a language, asked of the matcher in short, and the words that count together at one time.
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import type { Word } from '../../../../src/sweep/inputs.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import type { Match } from '../../../../src/voice/matching.ts';
import { matcherFor } from '../../../../src/voice/phonetic/match.ts';
import { inPhase } from '../../../sweep/staged.ts';

const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'turning', 'finished'] as const;

/** Where a verdict may still get its arrows, at a result, and in the set-up walk. */
const BESIDE: Readonly<Record<string, readonly Word[]>> = {
  'after a verdict': ['holding', 'left', 'right', 'balanced', 'lopsided', 'set', 'skip', 'undo', 'repeat', 'pause', 'finish', 'far view', 'help'],
  result: ['entered', 'next', 'undo', 'repeat', 'far view', 'help'],
  walk: ['next', 'back', 'repeat', 'far view', 'help'],
};

/** Every row of words that count together, by the name of its moment. */
export const MOMENTS: readonly (readonly [moment: string, words: readonly Word[]])[] = [
  ...PHASES.map((phase) => [phase, understood(inPhase(phase)).words] as const),
  ...Object.entries(BESIDE),
];

export function heardIn(language: HeardLanguage) {
  const { match, questionIn } = matcherFor(language);
  return {
    questionIn,
    heard: (text: string, allowed: readonly Word[], largest?: number): Match => match([{ text }], allowed, true, largest),
  };
}
