// How it was when a value was found or entered: light, temperature, the body's firmware, and a note. Every field may be
// unknown. `told` is when the person last set them, so that of two copies the newer is known.
import * as v from 'valibot';
import { Moment } from '../storedUnits.ts';

/** What does not fit, by the name that the schema gives it. */
export const CONDITION_FAULTS = [
  'no light',
  'light too low',
  'light too high',
  'no temperature',
  'temperature too low',
  'temperature too high',
  'firmware too long',
  'note too long',
] as const;
export type ConditionFault = (typeof CONDITION_FAULTS)[number];

const fault = (name: ConditionFault): ConditionFault => name;

/** Light on the target: exposure value at ISO 100. */
const LightLevel = v.pipe(v.number(fault('no light')), v.minValue(-10, fault('light too low')), v.maxValue(24, fault('light too high')), v.brand('EV'));

export const Temperature = v.pipe(
  v.number(fault('no temperature')),
  v.minValue(-60, fault('temperature too low')),
  v.maxValue(60, fault('temperature too high')),
  v.brand('Celsius'),
);
export type Temperature = v.InferOutput<typeof Temperature>;

const text = (most: number, tooLong: ConditionFault) => v.nullable(v.pipe(v.string(), v.maxLength(most, tooLong)));

export const Conditions = v.object({
  told: Moment,
  light: v.nullable(LightLevel),
  temperature: v.nullable(Temperature),
  firmware: text(40, 'firmware too long'),
  note: text(2000, 'note too long'),
});
export type Conditions = v.InferOutput<typeof Conditions>;

export const unknownConditions = (told: Moment): Conditions => ({
  told,
  light: null,
  temperature: null,
  firmware: null,
  note: null,
});
