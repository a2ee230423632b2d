// German: what does not fit the light, the temperature or a note, in a form or in a file.
import type { ConditionFault } from '../../logbook/conditions.ts';

export const CONDITION_FAULT: Readonly<Record<ConditionFault, string>> = {
  'no light': 'Geben Sie die Helligkeit als Lichtwert an, zum Beispiel 9.',
  'light too low': 'Die Helligkeit ist mindestens LW\u00a0\u221210.',
  'light too high': 'Die Helligkeit ist höchstens LW\u00a024.',
  'no temperature': 'Geben Sie die Temperatur in Grad Celsius an.',
  'temperature too low': 'Die Temperatur ist mindestens \u221260\u00a0°C.',
  'temperature too high': 'Die Temperatur ist höchstens 60\u00a0°C.',
  'firmware too long': 'Die Firmware hat höchstens 40 Zeichen.',
  'note too long': 'Die Notiz hat höchstens 2000 Zeichen.',
};
