// French: the card for the bag.
import type { CardLine } from '../../logbook/card.ts';
import type { CheckFound } from '../../logbook/newestCheck.ts';
import type { CardWords } from '../cardWords.ts';
import { line } from '../line.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const STATE: Readonly<Record<CardLine['state'], (day: string) => string>> = {
  entered: (day) => `saisi le ${day}`,
  measured: (day) => `mesuré le ${day}, non saisi`,
  differ: (day) => `saisi le ${day}, mais une autre valeur a été mesurée`,
};

const CHECKED: Readonly<Record<CheckFound['found'], (day: string) => string>> = {
  confirmed: (day) => `confirmé par photos le ${day}`,
  shifted: (day) => `décalage vu sur photos le ${day}`,
};

export const words: CardWords = {
  title: 'Carte pour le sac',
  gone: 'Ce boîtier n’est plus dans le matériel. Fermez cette page et rouvrez la carte depuis le matériel.',
  empty: 'Rien n’a encore été mesuré ni saisi pour ce boîtier.',
  about: (serial, printed) => [...(serial === null ? [] : [`N° de série ${serial}.`]), `Imprimé le ${write.day(printed)}.`],
  at: place,
  facts: ({ state, at, within, check, due }) =>
    line([
      STATE[state](write.day(at)),
      within !== null && `sûr à ${write.chance(within)}`,
      check && CHECKED[check.found](write.day(check.at)),
      due && 'à remesurer',
    ]),
};
