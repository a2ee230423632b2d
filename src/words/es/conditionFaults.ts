// Spanish: what does not fit the light, the temperature or a note, in a form or in a file.
import type { ConditionFault } from '../../logbook/conditions.ts';

export const CONDITION_FAULT: Readonly<Record<ConditionFault, string>> = {
  'no light': 'Indique la luz como valor de exposición, por ejemplo 9.',
  'light too low': 'La luz es al menos EV\u00a0\u221210.',
  'light too high': 'La luz es EV\u00a024 como máximo.',
  'no temperature': 'Indique la temperatura en grados Celsius.',
  'temperature too low': 'La temperatura es al menos \u221260\u00a0°C.',
  'temperature too high': 'La temperatura es 60\u00a0°C como máximo.',
  'firmware too long': 'Use 40 caracteres como máximo para el firmware.',
  'note too long': 'Use 2000 caracteres como máximo para la nota.',
};
