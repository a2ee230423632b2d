// German: what a backup would bring, and what in it cannot be read.
import type { Title } from '../../logbook/backup/items.ts';
import type { Compared, RestorePlan } from '../../logbook/backup/restore.ts';
import type { ListName } from '../../logbook/library.ts';
import type { SetAside } from '../../logbook/readLibrary.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** One item of a list, by the list's name in the file. */
const ITEM: Readonly<Record<ListName, string>> = {
  bodies: 'Gehäuse',
  lenses: 'Objektiv',
  converters: 'Konverter',
  situations: 'Situation',
  records: 'Durchlauf',
  byHand: 'Von Hand eingetragener Wert',
  entries: 'Eingestellter Wert',
  notes: 'Notiz',
  proofs: 'Prüfung mit Aufnahmen',
};

const LIST: Readonly<Record<ListName, string>> = {
  bodies: 'Gehäuse',
  lenses: 'Objektive',
  converters: 'Konverter',
  situations: 'Situationen',
  records: 'Durchläufe',
  byHand: 'von Hand eingetragenen Werte',
  entries: 'eingestellten Werte',
  notes: 'Notizen',
  proofs: 'Prüfungen mit Aufnahmen',
};

const COUNTED: readonly (readonly [keyof RestorePlan['counts'], (count: string) => string])[] = [
  ['new', (count) => `${count} neu`],
  ['same', (count) => `${count} wie hier`],
  ['newer', (count) => `${count} neuer als hier`],
  ['older', (count) => `${count} älter als hier`],
  ['conflict', (count) => `${count} wider\u00adsprüchlich`],
  ['invalid', (count) => `${count} nicht lesbar`],
];

const IS: Readonly<Record<Exclude<Compared, 'same'>, (title: string) => string>> = {
  new: (title) => `${title}: neu`,
  newer: (title) => `${title}: neuer als hier`,
  older: (title) => `${title}: älter als hier`,
  conflict: (title) => `${title}: wider\u00adsprüchlich`,
};

/** What the backup holds, and what is only here. */
export function brings({ counts, onlyHere }: RestorePlan): readonly string[] {
  const parts = COUNTED.filter(([which]) => counts[which] > 0).map(([which, counted]) => counted(write.number(counts[which])));
  return [
    parts.length === 0 ? 'Die Sicherung ist leer.' : `In der Sicherung: ${write.list(parts)}.`,
    write.count(onlyHere, { one: '# Eintrag ist nur hier.', other: '# Einträge sind nur hier.' }),
  ];
}

function titled(title: Title): string {
  switch (title.by) {
    case 'name':
      return title.name;
    case 'situation':
      return `${pair({ lens: title.lens ?? 'unbekanntes Objektiv', body: title.body ?? 'unbekanntem Gehäuse' })}, ${place(title)}`;
    case 'pair':
      return pair(title);
  }
}

/** What it is, behind its name. */
const KIND: Readonly<Record<ListName, string>> = {
  bodies: 'Gehäuse',
  lenses: 'Objektiv',
  converters: 'Konverter',
  situations: 'Situation',
  records: 'Durchlauf',
  byHand: 'von Hand eingetragener Wert',
  entries: 'eingestellter Wert',
  notes: 'Notiz',
  proofs: 'Prüfung mit Aufnahmen',
};

export const item = (list: ListName, title: Title, is: Exclude<Compared, 'same'>): string => IS[is](`${titled(title)} (${KIND[list]})`);

export function setAside(why: SetAside['why']): string {
  switch (why.is) {
    case 'no list':
      return `Die ${LIST[why.list]} dieser Sicherung sind nicht lesbar.`;
    case 'unfit':
      return why.field === null
        ? `${ITEM[why.list]} ${write.number(why.at)} ist nicht lesbar.`
        : `${ITEM[why.list]} ${write.number(why.at)} ist nicht lesbar, wegen „${why.field.slice(0, 60)}“ darin.`;
    case 'same id':
      return `${ITEM[why.list]} ${write.number(why.at)} wird ausgelassen, weil ein anderer Eintrag dieselbe Kennung hat.`;
    case 'taught words unread':
      return 'Die angelernten Wörter dieser Sicherung sind nicht lesbar. Lernen Sie sie in der Hörprüfung neu an.';
  }
}
