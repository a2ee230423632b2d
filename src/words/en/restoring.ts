// English: what a backup would bring, and what in it cannot be read.
import type { Title } from '../../logbook/backup/items.ts';
import type { Compared, RestorePlan } from '../../logbook/backup/restore.ts';
import type { ListName } from '../../logbook/library.ts';
import type { SetAside } from '../../logbook/readLibrary.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** One item of a list, by the list's name in the file. */
const ITEM: Readonly<Record<ListName, string>> = {
  bodies: 'Body',
  lenses: 'Lens',
  converters: 'Converter',
  situations: 'Situation',
  records: 'Sweep',
  byHand: 'Value put in by hand',
  entries: 'Entry',
  notes: 'Note',
  proofs: 'Check with photographs',
};

const LIST: Readonly<Record<ListName, string>> = {
  bodies: 'bodies',
  lenses: 'lenses',
  converters: 'converters',
  situations: 'situations',
  records: 'sweeps',
  byHand: 'values put in by hand',
  entries: 'entries',
  notes: 'notes',
  proofs: 'checks with photographs',
};

const COUNTED: readonly (readonly [keyof RestorePlan['counts'], (count: string) => string])[] = [
  ['new', (count) => `${count} new`],
  ['same', (count) => `${count} the same as here`],
  ['newer', (count) => `${count} newer than here`],
  ['older', (count) => `${count} older than here`],
  ['conflict', (count) => `${count} in conflict with what is here`],
  ['invalid', (count) => `${count} not readable`],
];

const IS: Readonly<Record<Exclude<Compared, 'same'>, (title: string) => string>> = {
  new: (title) => `${title}: new`,
  newer: (title) => `${title}: newer than here`,
  older: (title) => `${title}: older than here`,
  conflict: (title) => `${title}: in conflict with what is here`,
};

/** What the backup holds, and what is only here. */
export function brings({ counts, onlyHere }: RestorePlan): readonly string[] {
  const parts = COUNTED.filter(([which]) => counts[which] > 0).map(([which, counted]) => counted(write.number(counts[which])));
  return [
    parts.length === 0 ? 'The backup is empty.' : `In the backup: ${write.list(parts)}.`,
    write.count(onlyHere, { one: '# item is only here.', other: '# items are only here.' }),
  ];
}

function titled(title: Title): string {
  switch (title.by) {
    case 'name':
      return title.name;
    case 'situation':
      return `${pair({ lens: title.lens ?? 'unknown lens', body: title.body ?? 'unknown body' })}, ${place(title)}`;
    case 'pair':
      return pair(title);
  }
}

/** What it is, behind its name. */
const KIND: Readonly<Record<ListName, string>> = {
  bodies: 'body',
  lenses: 'lens',
  converters: 'converter',
  situations: 'situation',
  records: 'sweep',
  byHand: 'value put in by hand',
  entries: 'entry',
  notes: 'note',
  proofs: 'check with photographs',
};

export const item = (list: ListName, title: Title, is: Exclude<Compared, 'same'>): string => IS[is](`${titled(title)} (${KIND[list]})`);

export function setAside(why: SetAside['why']): string {
  switch (why.is) {
    case 'no list':
      return `The ${LIST[why.list]} in this backup cannot be read.`;
    case 'unfit':
      return why.field === null
        ? `${ITEM[why.list]} ${write.number(why.at)} cannot be read.`
        : `${ITEM[why.list]} ${write.number(why.at)} cannot be read, because of “${why.field.slice(0, 60)}” in it.`;
    case 'same id':
      return `${ITEM[why.list]} ${write.number(why.at)} is left out, because another one has its id.`;
    case 'taught words unread':
      return 'The taught words in this backup cannot be read. Teach them again in the hearing check.';
  }
}
