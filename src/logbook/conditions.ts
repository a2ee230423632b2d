// How it was when a value was found or entered: light, temperature, the body's firmware, and a note. Every field may be
// unknown. `told` is when the person last set them, so that of two copies the newer is known.
import * as v from 'valibot';
import { Moment } from '../storedUnits.ts';

/** Light on the target: exposure value at ISO 100. */
const LightLevel = v.pipe(
  v.number('Enter the light as an exposure value, such as 9.'),
  v.minValue(-10, 'The light is at least EV −10.'),
  v.maxValue(24, 'The light is at most EV 24.'),
  v.brand('EV'),
);

export const Temperature = v.pipe(
  v.number('Enter the temperature in degrees Celsius.'),
  v.minValue(-60, 'The temperature is at least −60 °C.'),
  v.maxValue(60, 'The temperature is at most 60 °C.'),
  v.brand('Celsius'),
);
export type Temperature = v.InferOutput<typeof Temperature>;

const text = (most: number) => v.nullable(v.pipe(v.string(), v.maxLength(most, `Use at most ${most} characters.`)));

export const Conditions = v.object({
  told: Moment,
  light: v.nullable(LightLevel),
  temperature: v.nullable(Temperature),
  firmware: text(40),
  note: text(2000),
});
export type Conditions = v.InferOutput<typeof Conditions>;

export const unknownConditions = (told: Moment): Conditions => ({
  told,
  light: null,
  temperature: null,
  firmware: null,
  note: null,
});
