// French: what a backup would bring, and what in it cannot be read.
import type { Title } from '../../logbook/backup/items.ts';
import type { Compared, RestorePlan } from '../../logbook/backup/restore.ts';
import type { ListName } from '../../logbook/library.ts';
import type { SetAside } from '../../logbook/readLibrary.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** One item of a list, by the list's name in the file. What is told of it agrees with “élément”. */
const ITEM: Readonly<Record<ListName, string>> = {
  bodies: 'Boîtier',
  lenses: 'Objectif',
  converters: 'Multiplicateur',
  situations: 'Configuration',
  records: 'Balayage',
  byHand: 'Valeur notée à la main',
  entries: 'Saisie',
  notes: 'Note',
  proofs: 'Contrôle par photos',
};

const LIST: Readonly<Record<ListName, string>> = {
  bodies: 'Les boîtiers',
  lenses: 'Les objectifs',
  converters: 'Les multiplicateurs',
  situations: 'Les configurations',
  records: 'Les balayages',
  byHand: 'Les valeurs notées à la main',
  entries: 'Les saisies',
  notes: 'Les notes',
  proofs: 'Les contrôles par photos',
};

const COUNTED: readonly (readonly [keyof RestorePlan['counts'], (count: number) => string])[] = [
  ['new', (count) => write.count(count, { one: '# nouveau', other: '# nouveaux' })],
  ['same', (count) => write.count(count, { one: '# identique', other: '# identiques' })],
  ['newer', (count) => write.count(count, { one: '# plus récent qu’ici', other: '# plus récents qu’ici' })],
  ['older', (count) => write.count(count, { one: '# plus ancien qu’ici', other: '# plus anciens qu’ici' })],
  ['conflict', (count) => `${write.number(count)} en conflit avec ce qui est ici`],
  ['invalid', (count) => write.count(count, { one: '# illisible', other: '# illisibles' })],
];

const IS: Readonly<Record<Exclude<Compared, 'same'>, (title: string) => string>> = {
  new: (title) => `${title} : à ajouter`,
  newer: (title) => `${title} : version plus récente qu’ici`,
  older: (title) => `${title} : version plus ancienne qu’ici`,
  conflict: (title) => `${title} : en conflit avec ce qui est ici`,
};

/** What the backup holds, and what is only here. */
export function brings({ counts, onlyHere }: RestorePlan): readonly string[] {
  const parts = COUNTED.filter(([which]) => counts[which] > 0).map(([which, counted]) => counted(counts[which]));
  return [
    parts.length === 0 ? 'La sauvegarde est vide.' : `Éléments de la sauvegarde : ${write.list(parts)}.`,
    onlyHere === 0 ? 'Il n’y a ici aucun élément de plus.' : write.count(onlyHere, { one: '# élément n’est qu’ici.', other: '# éléments ne sont qu’ici.' }),
  ];
}

function titled(title: Title): string {
  switch (title.by) {
    case 'name':
      return title.name;
    case 'situation':
      return `${pair({ lens: title.lens ?? 'objectif inconnu', body: title.body ?? 'boîtier inconnu' })}, ${place(title)}`;
    case 'pair':
      return pair(title);
  }
}

/** What it is, behind its name. */
const KIND: Readonly<Record<ListName, string>> = {
  bodies: 'boîtier',
  lenses: 'objectif',
  converters: 'multiplicateur',
  situations: 'configuration',
  records: 'balayage',
  byHand: 'valeur notée à la main',
  entries: 'saisie',
  notes: 'note',
  proofs: 'contrôle par photos',
};

export const item = (list: ListName, title: Title, is: Exclude<Compared, 'same'>): string => IS[is](`${titled(title)} (${KIND[list]})`);

export function setAside(why: SetAside['why']): string {
  switch (why.is) {
    case 'no list':
      return `${LIST[why.list]} de cette sauvegarde sont illisibles.`;
    case 'unfit':
      return why.field === null
        ? `${ITEM[why.list]} ${write.number(why.at)} : illisible.`
        : `${ITEM[why.list]} ${write.number(why.at)} : illisible, à cause de « ${why.field.slice(0, 60)} ».`;
    case 'same id':
      return `${ITEM[why.list]} ${write.number(why.at)} : élément laissé de côté, car un autre a le même identifiant.`;
    case 'taught words unread':
      return 'Les mots appris de cette sauvegarde sont illisibles. Refaites leur apprentis\u00adsage dans le test d’écoute.';
  }
}
