// English: how it was when a value was measured or entered.
import type { ConditionsWords } from '../conditionsWords.ts';
import { line } from '../line.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { write } from './write.ts';

export const words: ConditionsWords = {
  open: 'Date, light, temperature, note',
  fields: {
    day: { label: 'Date', hint: 'Year, month and day, such as 2026-03-04.' },
    temperature: { label: 'Temperature, °C' },
    light: { label: 'Light, EV at ISO 100' },
    firmware: { label: 'Firmware of the body' },
    note: { label: 'Note' },
  },
  fault: {
    ...CONDITION_FAULT,
    'no day': 'Enter the date as year, month and day, such as 2026-03-04. It cannot be after today.',
    'does not fit': 'This does not fit. Check what you entered.',
  },
  inLine: (conditions) =>
    conditions === null
      ? ''
      : line([
          conditions.light !== null && `EV ${write.number(conditions.light, 1)}`,
          conditions.temperature !== null && write.unit(conditions.temperature, 'celsius', 1),
          conditions.firmware && `firmware ${conditions.firmware}`,
          conditions.note,
        ]),
};
