// German: how it was when a value was measured or entered.
import type { ConditionsWords } from '../conditionsWords.ts';
import { line } from '../line.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { write } from './write.ts';

export const words: ConditionsWords = {
  open: 'Datum, Helligkeit, Temperatur, Notiz',
  fields: {
    day: { label: 'Datum', hint: 'Jahr, Monat und Tag, zum Beispiel 2026-03-04.' },
    temperature: { label: 'Temperatur, °C' },
    light: { label: 'Helligkeit, LW bei ISO\u00a0100' },
    firmware: { label: 'Firmware des Gehäuses' },
    note: { label: 'Notiz' },
  },
  fault: {
    ...CONDITION_FAULT,
    'no day': 'Geben Sie das Datum als Jahr, Monat und Tag an, zum Beispiel 2026-03-04. Es darf nicht in der Zukunft liegen.',
    'does not fit': 'Das passt nicht. Prüfen Sie Ihre Angabe.',
  },
  inLine: (conditions) =>
    conditions === null
      ? ''
      : line([
          conditions.light !== null && `LW\u00a0${write.number(conditions.light, 1)}`,
          conditions.temperature !== null && write.unit(conditions.temperature, 'celsius', 1),
          conditions.firmware && `Firmware ${conditions.firmware}`,
          conditions.note,
        ]),
};
