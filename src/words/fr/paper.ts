// French: what every page for paper says.
import type { PaperWords } from '../paperWords.ts';

export const words: PaperWords = { print: 'Imprimer', sizes: { A6: 'A6', A4: 'A4', Letter: 'Letter' } };
