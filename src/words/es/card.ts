// Spanish: the card for the bag.
import type { CardLine } from '../../logbook/card.ts';
import type { CheckFound } from '../../logbook/newestCheck.ts';
import type { CardWords } from '../cardWords.ts';
import { line } from '../line.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const STATE: Readonly<Record<CardLine['state'], (day: string) => string>> = {
  entered: (day) => `introducido ${day}`,
  measured: (day) => `medido ${day}, sin introducir`,
  differ: (day) => `introducido ${day}, pero se midió otro valor`,
};

const CHECKED: Readonly<Record<CheckFound['found'], (day: string) => string>> = {
  confirmed: (day) => `confirmado con fotos ${day}`,
  shifted: (day) => `las fotos mostraron una desviación ${day}`,
};

export const words: CardWords = {
  title: 'Ficha para la bolsa',
  gone: 'Este cuerpo ya no está en el equipo. Cierre esta página y vuelva a abrir la ficha desde el equipo.',
  empty: 'Aún no se ha medido ni introducido nada para este cuerpo.',
  about: (serial, printed) => [...(serial === null ? [] : [`Número de serie ${serial}.`]), `Impresa el ${write.day(printed)}.`],
  at: place,
  facts: ({ state, at, within, check, due }) =>
    line([
      STATE[state](write.day(at)),
      within !== null && `${write.chance(within)} de confianza`,
      check && CHECKED[check.found](write.day(check.at)),
      due && 'pendiente',
    ]),
};
