// French: phrases as sentences of their own, "Clignotant, gauche. Plus six.", and sentences one after another.
import { runIn, sentencesIn } from '../run.ts';

export const sentences = (...phrases: readonly (string | null)[]): string => sentencesIn('fr', phrases);

/** Whole sentences one after another. */
export const together = (...parts: readonly (string | false | null | undefined)[]): string => runIn('fr', parts);
