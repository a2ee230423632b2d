// French: how it was when a value was measured or entered.
import type { ConditionsWords } from '../conditionsWords.ts';
import { line } from '../line.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { write } from './write.ts';

export const words: ConditionsWords = {
  open: 'Date, lumière, température, note',
  fields: {
    day: { label: 'Date', hint: 'Année, mois et jour, par exemple 2026-03-04.' },
    temperature: { label: 'Température, °C' },
    light: { label: 'Lumière, EV à 100 ISO' },
    firmware: { label: 'Micrologiciel du boîtier' },
    note: { label: 'Note' },
  },
  fault: {
    ...CONDITION_FAULT,
    'no day': 'Indiquez la date par année, mois et jour, par exemple 2026-03-04. Elle ne peut pas être dans l’avenir.',
    'does not fit': 'Cela ne convient pas. Vérifiez ce que vous avez indiqué.',
  },
  inLine: (conditions) =>
    conditions === null
      ? ''
      : line([
          conditions.light !== null && `EV ${write.number(conditions.light, 1)}`,
          conditions.temperature !== null && write.unit(conditions.temperature, 'celsius', 1),
          conditions.firmware && `micro\u00adlogiciel ${conditions.firmware}`,
          conditions.note,
        ]),
};
