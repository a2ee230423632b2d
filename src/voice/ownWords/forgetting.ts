// Which takes stay when a word is taught anew, and when taught words are brought in.
import type { Take } from './take.ts';

/** A word is taught anew by leaving its old takes out. */
export const withoutWord = (takes: readonly Take[], word: string): readonly Take[] => takes.filter((take) => take.word !== word);

/** Every word of both; one that is in both as it is in the first. */
export function joinTaught(first: readonly Take[], second: readonly Take[]): readonly Take[] {
  const known = new Set(first.map(({ word }) => word));
  return [...first, ...second.filter(({ word }) => !known.has(word))];
}
