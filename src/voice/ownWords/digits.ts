// The ten digits as they are said: what numbers are told with where each word is taught by itself.
import type { SaidNumbers } from '../../hearing/languages/heardLanguage.ts';

/** By the digit. */
export const digitsOf = ({ say }: SaidNumbers): readonly string[] => Array.from({ length: 10 }, (_, digit) => say(digit));
