// French: what does not fit the light, the temperature or a note, in a form or in a file.
import type { ConditionFault } from '../../logbook/conditions.ts';

export const CONDITION_FAULT: Readonly<Record<ConditionFault, string>> = {
  'no light': 'Indiquez la lumière en EV à 100 ISO, par exemple 9.',
  'light too low': 'La lumière est d’au moins EV \u221210.',
  'light too high': 'La lumière est d’au plus EV 24.',
  'no temperature': 'Indiquez la température en degrés Celsius.',
  'temperature too low': 'La température est d’au moins \u221260 °C.',
  'temperature too high': 'La température est d’au plus 60 °C.',
  'firmware too long': 'Écrivez au plus 40 caractères pour le micro\u00adlogiciel.',
  'note too long': 'Écrivez au plus 2000 caractères pour la note.',
};
