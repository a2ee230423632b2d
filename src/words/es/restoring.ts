// Spanish: what a backup would bring, and what in it cannot be read.
import type { Title } from '../../logbook/backup/items.ts';
import type { Compared, RestorePlan } from '../../logbook/backup/restore.ts';
import type { ListName } from '../../logbook/library.ts';
import type { SetAside } from '../../logbook/readLibrary.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

/** One item of a list, by the list's name in the file; after its number "no se puede leer" fits each. */
const ITEM: Readonly<Record<ListName, string>> = {
  bodies: 'El cuerpo',
  lenses: 'El objetivo',
  converters: 'El convertidor',
  situations: 'La situación',
  records: 'El barrido',
  byHand: 'El valor a mano',
  entries: 'El valor introducido',
  notes: 'La nota',
  proofs: 'La comprobación con fotos',
};

const LIST: Readonly<Record<ListName, string>> = {
  bodies: 'los cuerpos',
  lenses: 'los objetivos',
  converters: 'los convertidores',
  situations: 'las situaciones',
  records: 'los barridos',
  byHand: 'los valores introducidos a mano',
  entries: 'los valores introducidos',
  notes: 'las notas',
  proofs: 'las comprobaciones con fotos',
};

const COUNTED: readonly (readonly [keyof RestorePlan['counts'], { readonly one: string; readonly other: string }])[] = [
  ['new', { one: '# elemento nuevo', other: '# elementos nuevos' }],
  ['same', { one: '# igual que aquí', other: '# iguales que aquí' }],
  ['newer', { one: '# más nuevo que aquí', other: '# más nuevos que aquí' }],
  ['older', { one: '# más antiguo que aquí', other: '# más antiguos que aquí' }],
  ['conflict', { one: '# en conflicto con lo de aquí', other: '# en conflicto con lo de aquí' }],
  ['invalid', { one: '# ilegible', other: '# ilegibles' }],
];

const IS: Readonly<Record<Exclude<Compared, 'same'>, (title: string) => string>> = {
  new: (title) => `${title}: no está aquí`,
  newer: (title) => `${title}: versión más nueva que aquí`,
  older: (title) => `${title}: versión más antigua que aquí`,
  conflict: (title) => `${title}: en conflicto con lo de aquí`,
};

/** What the backup holds, and what is only here. */
export function brings({ counts, onlyHere }: RestorePlan): readonly string[] {
  const parts = COUNTED.filter(([which]) => counts[which] > 0).map(([which, forms]) => write.count(counts[which], forms));
  return [
    parts.length === 0 ? 'La copia de seguridad está vacía.' : `En la copia de seguridad: ${write.list(parts)}.`,
    write.count(onlyHere, { one: '# elemento está solo aquí.', other: '# elementos están solo aquí.' }),
  ];
}

function titled(title: Title): string {
  switch (title.by) {
    case 'name':
      return title.name;
    case 'situation':
      return `${pair({ lens: title.lens ?? 'objetivo desconocido', body: title.body ?? 'cuerpo desconocido' })}, ${place(title)}`;
    case 'pair':
      return pair(title);
  }
}

/** What it is, behind its name. */
const KIND: Readonly<Record<ListName, string>> = {
  bodies: 'cuerpo',
  lenses: 'objetivo',
  converters: 'convertidor',
  situations: 'situación',
  records: 'barrido',
  byHand: 'valor a mano',
  entries: 'valor introducido',
  notes: 'nota',
  proofs: 'comprobación con fotos',
};

export const item = (list: ListName, title: Title, is: Exclude<Compared, 'same'>): string => IS[is](`${titled(title)} (${KIND[list]})`);

export function setAside(why: SetAside['why']): string {
  switch (why.is) {
    case 'no list':
      return `No se pueden leer ${LIST[why.list]} de esta copia de seguridad.`;
    case 'unfit':
      return why.field === null
        ? `${ITEM[why.list]} ${write.number(why.at)} no se puede leer.`
        : `${ITEM[why.list]} ${write.number(why.at)} no se puede leer, a causa de «${why.field.slice(0, 60)}».`;
    case 'same id':
      return `${ITEM[why.list]} ${write.number(why.at)} se deja fuera, porque hay otro elemento con su identificador.`;
    case 'taught words unread':
      return 'No se pueden leer las palabras propias de esta copia de seguridad. Vuelva a enseñarlas en la prueba de escucha.';
  }
}
