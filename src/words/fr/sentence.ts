// French: short phrases as sentences of their own. "Clignotant, gauche. Plus six."
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** After a colon a sentence goes on small. */
export const uncapital = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

/** Those that are not there are passed over. */
export const sentences = (...phrases: readonly (string | null)[]): string =>
  phrases
    .filter((phrase) => phrase !== null)
    .map((phrase) => `${capital(phrase)}.`)
    .join(' ');
