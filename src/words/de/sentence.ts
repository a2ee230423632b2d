// German: phrases as sentences of their own, "Flackern, links. Plus sechs.", and sentences one after another.
import { runIn, sentencesIn } from '../run.ts';

export const sentences = (...phrases: readonly (string | null)[]): string => sentencesIn('de', phrases);

/** Whole sentences one after another. */
export const together = (...parts: readonly (string | false | null | undefined)[]): string => runIn('de', parts);
