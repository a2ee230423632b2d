// What each situation was measured at last, in a few words.
import { newestOfEach } from '../../logbook/newest.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { resultInWords } from '../words/results.ts';
import { onDay } from '../words/quantities.ts';

export const lastValues = (records: readonly LogRecord[]): ReadonlyMap<string, string> =>
  new Map(
    newestOfEach(records.filter(({ practice }) => !practice)).map(({ subject, outcome, finished }) => [
      subject.situation,
      `last ${resultInWords(outcome)}, ${onDay(finished)}`,
    ]),
  );
