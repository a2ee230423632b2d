// English: backups, tables, and the copies that the browser keeps.
import type { FilesWords } from '../filesWords.ts';
import { brings, item, setAside } from './restoring.ts';
import { columnSaid, lineFault } from './tableFaults.ts';
import { write } from './write.ts';

const UNCHANGED = 'Nothing is changed yet.';

export const words: FilesWords = {
  title: 'Backup and tables',
  drop: 'Choose it, or drop it here.',
  unread: 'This file cannot be read. Check that it is still there, then choose it again.',
  howFar: {
    writing: (share) => `Writing the backup: ${write.percent(share)}.`,
    reading: (share) => `Reading the file: ${write.percent(share)}.`,
    comparing: (share) => `Comparing it with what is here: ${write.percent(share)}.`,
    bringing: (share) => `Bringing it in: ${write.percent(share)}.`,
  },
  backup: {
    title: 'Backup',
    about: 'It holds the kit, the logbook and the words you taught. The small crops kept of photographs are not in it.',
    newest: (made) => (made === null ? 'No backup was written from here yet.' : `The newest backup is from ${write.day(made)}.`),
    write: 'Write a backup file',
    withoutWords: 'The backup is written, but without the words you taught. They cannot be read just now.',
  },
  reminder: {
    label: 'Backup',
    unsaved: (count) => write.count(count, { one: '# record is in no backup.', other: '# records are in no backup.' }),
    uninstall: 'When Sweepbook is uninstalled, the logbook is deleted.',
    notNow: 'Not now',
  },
  restore: {
    choose: 'Bring a backup back in',
    fault: {
      'too large': 'This file is too large for a backup. Choose one that Sweepbook has written.',
      'no backup': 'This is not a backup. Choose a file that Sweepbook has written.',
      damaged: 'This file is cut short or damaged. Choose another backup.',
      'no logbook': 'This file holds no logbook. Choose one that Sweepbook has written.',
      'no version': 'The logbook in this file does not say its version. Choose a file that Sweepbook has written.',
      newer: 'This backup was written by a newer Sweepbook. Update this one first.',
    },
    plan: (made, plan) => [`Written on ${write.day(made)}.`, ...brings(plan), UNCHANGED],
    taught: (count) =>
      `It also holds ${write.count(count, { one: '# taught word', other: '# taught words' })}. If you join them, a word that is taught here too stays as it is.`,
    conflict: 'If you join them, records in conflict are both kept. For kit in conflict, the later change counts.',
    each: 'Each of them',
    item,
    more: (count) => write.count(count, { one: 'and # more item', other: 'and # more items' }),
    aside: setAside,
    join: 'Join it with what is here',
    replace: 'Replace everything here',
    leave: 'Leave everything as it is',
    done: 'Done. A copy of how it was before is kept below.',
    withoutWords: (why) => `The logbook is brought in. ${why}`,
  },
  table: {
    title: 'Table',
    about: 'Every measurement, entry and check with photographs in one line, for a spreadsheet. The holds are only in the backup.',
    write: 'Write a table',
    choose: 'Bring a table in',
    fault: (fault) => {
      switch (fault.is) {
        case 'open quote':
          return `Line ${write.number(fault.line)}: a quotation mark is not closed. Close it, then choose the file again.`;
        case 'stray quote':
          return `Line ${write.number(fault.line)}: a quotation mark stands in the middle of a field. Remove it, then choose the file again.`;
        case 'empty':
          return 'This table is empty. It needs a line of headings and one line for each value.';
        case 'too many lines':
          return `This table has more than ${write.number(fault.most)} lines. Split it into smaller ones.`;
      }
    },
    meanings: 'What each heading means',
    passedOver: 'not used',
    column: (number) => `Column ${write.number(number)}`,
    meaning: ({ key, heading }) => columnSaid(key, heading),
    missing: (meanings) => `Choose which headings mean these: ${write.list(meanings)}.`,
    plan: ({ added, same, withoutValue, faults, newKit }) => [
      `${write.list([`${write.number(added)} new`, `${write.number(same)} already here`, `${write.number(withoutValue)} without a value`, `${write.number(faults.length)} with a fault`])}.`,
      ...(newKit.length === 0 ? [] : [`New in the kit: ${write.list(newKit)}.`]),
      UNCHANGED,
    ],
    line: lineFault,
    more: (count) => write.count(count, { one: 'and # more line with a fault', other: 'and # more lines with faults' }),
    bring: 'Bring in what fits',
    done: 'The table is in the logbook.',
  },
  copies: {
    title: 'Copies in this browser',
    none: 'There are none yet.',
    unread: 'The daily copies cannot be read. What is stored is not affected.',
    bringBack: (at) => `Bring back ${write.dayAndSecond(at)}`,
    done: 'Everything is as it was then.',
  },
};
