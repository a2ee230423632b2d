// English: what every page for paper says.
import type { PrintWords } from '../printWords.ts';

export const words: PrintWords = { print: 'Print' };
