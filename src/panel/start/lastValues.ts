// What each situation was measured at last, in a few words.
import { lookUp } from '../../logbook/lookUp.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { resultInWords } from '../words/results.ts';
import { onDay } from '../words/quantities.ts';

export const lastValues = (records: readonly LogRecord[]): ReadonlyMap<string, string> =>
  new Map(
    lookUp(
      records.filter(({ practice }) => !practice),
      '',
    ).map(({ subject, outcome, finished }) => [subject.situation, `last ${resultInWords(outcome)}, ${onDay(finished)}`]),
  );
