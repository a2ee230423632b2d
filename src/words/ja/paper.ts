// Japanese: what every page for paper says.
import type { PaperWords } from '../paperWords.ts';

export const words: PaperWords = { print: '印刷' };
