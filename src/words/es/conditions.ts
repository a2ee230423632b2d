// Spanish: how it was when a value was measured or entered.
import type { ConditionsWords } from '../conditionsWords.ts';
import { line } from '../line.ts';
import { CONDITION_FAULT } from './conditionFaults.ts';
import { write } from './write.ts';

export const words: ConditionsWords = {
  open: 'Fecha, luz, temperatura, nota',
  fields: {
    day: { label: 'Fecha', hint: 'Año, mes y día, por ejemplo 2026-03-04.' },
    temperature: { label: 'Temperatura, °C' },
    light: { label: 'Luz, EV a ISO\u00a0100' },
    firmware: { label: 'Firmware del cuerpo' },
    note: { label: 'Nota' },
  },
  fault: {
    ...CONDITION_FAULT,
    'no day': 'Indique la fecha como año, mes y día, por ejemplo 2026-03-04. No puede ser posterior a hoy.',
    'does not fit': 'No es válido. Revise lo que ha escrito.',
  },
  inLine: (conditions) =>
    conditions === null
      ? ''
      : line([
          conditions.light !== null && `EV\u00a0${write.number(conditions.light, 1)}`,
          conditions.temperature !== null && write.unit(conditions.temperature, 'celsius', 1),
          conditions.firmware && `firmware ${conditions.firmware}`,
          conditions.note,
        ]),
};
