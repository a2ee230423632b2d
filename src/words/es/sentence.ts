// Spanish: phrases as sentences of their own, "Parpadea, izquierda. Más seis.", and sentences one after another.
import { runIn, sentencesIn } from '../run.ts';

export const sentences = (...phrases: readonly (string | null)[]): string => sentencesIn('es', phrases);

/** Whole sentences one after another. */
export const together = (...parts: readonly (string | false | null | undefined)[]): string => runIn('es', parts);
