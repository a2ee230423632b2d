// How it was, in a line: light, temperature, firmware, and the person's note.
import type { Conditions } from '../../logbook/conditions.ts';

/** Empty where nothing was told. */
export function conditionsInWords(conditions: Conditions | null): string {
  if (!conditions) return '';
  const { light, temperature, firmware, note } = conditions;
  return [
    light !== null && `EV ${light}`,
    temperature !== null && `${String(temperature).replace('-', '\u2212')} °C`,
    firmware && `firmware ${firmware}`,
    note,
  ]
    .filter(Boolean)
    .join(' \u00b7 ');
}
