// English: phrases as sentences of their own, "Flicker, left. Plus six.", and sentences one after another.
import { runIn, sentencesIn } from '../run.ts';

export const sentences = (...phrases: readonly (string | null)[]): string => sentencesIn('en', phrases);

/** Whole sentences one after another. */
export const together = (...parts: readonly (string | false | null | undefined)[]): string => runIn('en', parts);
