// Japanese: short phrases as sentences of their own. 「ちらつき、左。プラス6。」

/** Those that are not there are passed over. */
export const sentences = (...phrases: readonly (string | null)[]): string =>
  phrases
    .filter((phrase) => phrase !== null)
    .map((phrase) => `${phrase}。`)
    .join('');

/** Whole sentences one after another, without a space between them; those that are not there are passed over. */
export const together = (...parts: readonly (string | false | null | undefined)[]): string => parts.filter(Boolean).join('');
