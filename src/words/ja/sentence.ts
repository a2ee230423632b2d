// Japanese: phrases as sentences of their own, 「ちらつき、左。プラス6。」, and sentences one after another.
import { runIn, sentencesIn } from '../run.ts';

export const sentences = (...phrases: readonly (string | null)[]): string => sentencesIn('ja', phrases);

/** Whole sentences one after another. */
export const together = (...parts: readonly (string | false | null | undefined)[]): string => runIn('ja', parts);
