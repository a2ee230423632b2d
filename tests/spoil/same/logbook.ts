// Changes of src/logbook from which nothing follows, and why.
import type { Same } from './same.ts';

export const LOGBOOK: readonly Same[] = [
  { file: 'src/logbook/combined.ts', line: 'i2: q > freedom ?', after: '>=', why: 'Where both are the same, the share is none either way.' },
  {
    file: 'src/logbook/combined.ts',
    line: 'compared.differ && compared.bayesFactor >= STRONG',
    after: '(compared.bayesFactor >= STRONG)',
    why: 'Within both intervals the odds are below seven: twenty are only reached beyond them.',
  },
  {
    file: 'src/logbook/combined.ts',
    line: 'compared.differ && compared.bayesFactor >= STRONG',
    after: '>',
    why: 'No odds are twenty to the last digit of an exponential.',
  },
  {
    file: 'src/logbook/csv/csv.ts',
    line: 'if (cells.length > 0) endLine();',
    after: '1',
    why: 'A line is left open only by a mark at the very end, and then it has two fields at least.',
  },
  {
    file: 'src/logbook/csv/csv.ts',
    line: 'while (close >= 0 && text[close + 1] === ',
    after: '>',
    why: 'The quote that closes never stands first: the one that opens lies before it.',
  },
  { file: 'src/logbook/csv/csv.ts', line: 'while (close >= 0 && text[close + 1] === ', after: '1', why: 'The same.' },
  { file: 'src/logbook/csv/csv.ts', line: 'return close < 0 ? null', after: '<=', why: 'The same.' },
  { file: 'src/logbook/csv/csv.ts', line: 'return close < 0 ? null', after: '1', why: 'The same.' },
  {
    file: 'src/logbook/entering/advice.ts',
    line: "const keepsTwo = body.zoomStore === 'two' && zooms(lens)",
    after: "(body.zoomStore === 'two' && zooms(lens))",
    why: 'A lens that zooms has focal lengths.',
  },
  { file: 'src/logbook/search/searchIndex.ts', line: 'if (how === 0) continue;', after: 'false', why: 'What does not fit adds nothing.' },
  { file: 'src/logbook/search/searchIndex.ts', line: 'new Float64Array(index.count).fill(1)', after: '2', why: 'Every document begins with the same.' },
  {
    file: 'src/logbook/search/typo.ts',
    line: 'if (i > 1 && j > 1 &&',
    after: '>=',
    why: 'Before the first letter stands none, and none is no letter of the other word.',
  },
];
