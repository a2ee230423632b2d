// What is answered when it is said or keyed, though it is not offered.
import type { Word } from './inputs.ts';

/** Undo is answered also where there is nothing to undo, or silence would follow. */
export const heeded = (words: readonly Word[]): readonly Word[] => (words.includes('undo') ? words : [...words, 'undo']);
