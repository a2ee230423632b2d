// German: the card for the bag.
import type { CardLine } from '../../logbook/card.ts';
import type { CheckFound } from '../../logbook/newestCheck.ts';
import type { CardWords } from '../cardWords.ts';
import { line } from '../line.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const STATE: Readonly<Record<CardLine['state'], (day: string) => string>> = {
  entered: (day) => `eingestellt ${day}`,
  measured: (day) => `gemessen ${day}, nicht eingestellt`,
  differ: (day) => `eingestellt ${day}, aber anderer Wert gemessen`,
};

const CHECKED: Readonly<Record<CheckFound['found'], (day: string) => string>> = {
  confirmed: (day) => `mit Aufnahmen bestätigt ${day}`,
  shifted: (day) => `laut Aufnahmen versetzt ${day}`,
};

export const words: CardWords = {
  title: 'Karte für die Tasche',
  gone: 'Dieses Gehäuse ist nicht mehr in der Ausrüstung. Schließen Sie diese Seite und öffnen Sie die Karte von der Ausrüstung aus neu.',
  empty: 'Für dieses Gehäuse wurde noch nichts gemessen oder eingestellt.',
  about: (serial, printed) => [...(serial === null ? [] : [`Seriennummer ${serial}.`]), `Gedruckt am ${write.day(printed)}.`],
  at: place,
  facts: ({ state, at, within, check, due }) =>
    line([
      STATE[state](write.day(at)),
      within !== null && `zu ${write.chance(within)} sicher`,
      check && CHECKED[check.found](write.day(check.at)),
      due && 'wieder fällig',
    ]),
};
