// A word is taught anew by leaving its old takes out.
import type { Take } from './take.ts';

export const forget = (takes: readonly Take[], word: string): readonly Take[] => takes.filter((take) => take.word !== word);
