// Contract of backups at their bounds: how large a file may be, when one is old, and which records no backup holds.
import { describe, expect, test } from 'vitest';
import { readBackup, readingBackup, writeBackup, writingBackup } from '../../src/logbook/backup/backup.ts';
import { backupReminder } from '../../src/logbook/backup/reminder.ts';
import { EMPTY_LIBRARY } from '../../src/logbook/library.ts';
import type { Stepwise } from '../../src/stepwise.ts';
import { moment } from '../../src/units.ts';
import { ownWordsOf } from '../../src/voice/ownWords/take.ts';
import { orThrown } from '../kept/orThrown.ts';
import { DAY, libraryWith, sweepRecord, T0 } from './libraryWith.ts';
import { seededLibrary } from './seededLibrary.ts';

const NOW = moment(T0 + 900 * DAY);
const fault = (text: string) => {
  const read = readBackup(text);
  return read.ok ? null : read.fault;
};
const stepsOf = (work: Stepwise<unknown>): string[] => {
  const far: string[] = [];
  for (let step = work.next(); !step.done; step = work.next()) far.push(`${step.value.done}/${step.value.of}`);
  return far;
};

describe('a file', () => {
  test('of more than 200 million signs is not read', () => {
    // Only its length is asked; a text of that size would take its time.
    const long = (length: number) => ({ length, replace: () => '' }) as unknown as string;
    expect([fault(long(200_000_000)), fault(long(200_000_001))]).toEqual(['damaged', 'too large']);
  });

  test('is one JSON text of everything, with and without records and words', () => {
    const take = { word: 'solid', noise: Array<number>(8).fill(-100), frames: Array<number>(64).fill(-90) };
    const [first, second] = [ownWordsOf('en-US', [take]), ownWordsOf('de-DE', [take])];
    for (const library of [EMPTY_LIBRARY, seededLibrary(2)]) {
      expect(JSON.parse(writeBackup(library, NOW))).toEqual({ sweepbook: 'backup', made: NOW, library });
      expect(JSON.parse(writeBackup(library, NOW, [first]))).toEqual({ sweepbook: 'backup', made: NOW, library, words: first });
      const both = writeBackup(library, NOW, [first, second]);
      expect(both).toBe(`${JSON.stringify({ sweepbook: 'backup', made: NOW, library, words: first, otherWords: [second] }, null, 1)}\n`);
      const read = readBackup(both);
      expect(read.ok && [read.value.words, read.value.made, read.value.setAside]).toEqual([[first, second], NOW, []]);
    }
  });

  test('without the first words is read with the others, and what is no backup says so', () => {
    const words = ownWordsOf('de-DE', []);
    const text = JSON.stringify({ sweepbook: 'backup', made: 5, library: EMPTY_LIBRARY, otherWords: [words, 7] });
    const read = orThrown(() => readBackup(text));
    expect(typeof read !== 'string' && read.ok && [read.value.words.length, read.value.setAside]).toEqual([
      1,
      [{ item: 7, why: { is: 'taught words unread' } }],
    ]);
    expect(
      [
        '',
        '{',
        '{}',
        'null',
        JSON.stringify({ sweepbook: 'backup', made: 5, library: 7 }),
        JSON.stringify({ sweepbook: 'backup', made: -1, library: EMPTY_LIBRARY }),
      ].map((one) => orThrown(() => fault(one))),
    ).toEqual(['damaged', 'damaged', 'no backup', 'no backup', 'no logbook', 'no backup']);
  });

  test('is written and read record by record, counted from one', () => {
    const library = libraryWith({ records: ['a', 'b', 'c'].map((id) => sweepRecord(id, T0, 2, 8)) });
    expect(stepsOf(writingBackup(library, NOW))).toEqual(['1/3', '2/3', '3/3']);
    expect(stepsOf(readingBackup(writeBackup(library, NOW)))).toEqual(['1/6', '2/6', '3/6', '4/6', '5/6', '6/6']);
  });
});

describe('the reminder in the logbook', () => {
  const one = libraryWith({ records: [sweepRecord('r', T0, 2, 8)] });
  const after = (days: number, library = one) => backupReminder(library, moment(T0 - DAY), moment(T0 - DAY + days * DAY));

  test('comes with the thirtieth day', () => {
    expect([after(29.999), after(30), after(30.999), after(31)]).toEqual([
      null,
      { is: 'old', days: 30, unsaved: 1 },
      { is: 'old', days: 30, unsaved: 1 },
      { is: 'old', days: 31, unsaved: 1 },
    ]);
  });

  test('counts all that came after the backup, and not what came at its very moment', () => {
    const library = libraryWith({ records: [sweepRecord('r', T0, 2, 8)], byHand: [{ id: 'h' }], entries: [{ id: 'e' }], proofs: [{ id: 'p' }] });
    const made = (at: number) => backupReminder(library, moment(at), moment(T0 + 99 * DAY));
    expect([made(T0 - 1)?.unsaved, made(T0)]).toEqual([4, null]);
    expect([backupReminder(library, null, moment(T0)), backupReminder(EMPTY_LIBRARY, null, moment(T0))]).toEqual([{ is: 'none yet', unsaved: 4 }, null]);
  });
});
