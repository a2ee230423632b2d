// English: what does not fit the light, the temperature or a note, in a form or in a file.
import type { ConditionFault } from '../../logbook/conditions.ts';

export const CONDITION_FAULT: Readonly<Record<ConditionFault, string>> = {
  'no light': 'Enter the light as an exposure value, such as 9.',
  'light too low': 'The light is at least EV \u221210.',
  'light too high': 'The light is at most EV 24.',
  'no temperature': 'Enter the temperature in degrees Celsius.',
  'temperature too low': 'The temperature is at least \u221260°C.',
  'temperature too high': 'The temperature is at most 60°C.',
  'firmware too long': 'Use at most 40 characters for the firmware.',
  'note too long': 'Use at most 2000 characters for the note.',
};
