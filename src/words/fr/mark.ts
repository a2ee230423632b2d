// French: what the mark says while voice is off; there at once with the first screen, unlike every other area.
import type { MarkWords } from '../markWords.ts';

export const words: MarkWords = { word: 'voix coupée', press: 'voix coupée : l’activer' };
