// Spanish: short phrases as sentences of their own. "Parpadea, izquierda. Más seis."
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** As it stands after a colon. */
export const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Those that are not there are passed over. */
export const sentences = (...phrases: readonly (string | null)[]): string =>
  phrases
    .filter((phrase) => phrase !== null)
    .map((phrase) => `${capital(phrase)}.`)
    .join(' ');
