// English: the card for the bag.
import type { CardLine } from '../../logbook/card.ts';
import type { CheckFound } from '../../logbook/newestCheck.ts';
import type { CardWords } from '../cardWords.ts';
import { line } from '../line.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const STATE: Readonly<Record<CardLine['state'], (day: string) => string>> = {
  entered: (day) => `entered ${day}`,
  measured: (day) => `measured ${day}, not entered`,
  differ: (day) => `entered ${day}, but another value was measured`,
};

const CHECKED: Readonly<Record<CheckFound['found'], (day: string) => string>> = {
  confirmed: (day) => `confirmed with photographs ${day}`,
  shifted: (day) => `photographs showed a shift ${day}`,
};

export const words: CardWords = {
  title: 'Card for the bag',
  gone: 'This body is no longer in the kit. Close this page and open the card again from the kit.',
  empty: 'Nothing was measured or entered for this body yet.',
  about: (serial, printed) => [...(serial === null ? [] : [`Serial ${serial}.`]), `Printed ${write.day(printed)}.`],
  at: place,
  facts: ({ state, at, within, check, due }) =>
    line([
      STATE[state](write.day(at)),
      within !== null && `${write.chance(within)} sure`,
      check && CHECKED[check.found](write.day(check.at)),
      due && 'due again',
    ]),
};
