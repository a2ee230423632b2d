// Changes of the calendar from which nothing follows, and why.
import type { Same } from './same.ts';

export const CALENDAR: readonly Same[] = [
  {
    file: 'src/calendar.ts',
    line: 'if (year < 1969 || year > LAST_YEAR',
    after: '(year > LAST_YEAR)',
    why: 'A year before has no moment after the beginning of 1970, whatever its zone.',
  },
];
