// The quantities of the bench beside lengths and time. A brand keeps an f-number from being taken for a magnification;
// each range is wider than any bench needs, so that only a slip falls outside it.
import * as v from 'valibot';
import type { PlainFault } from './fault.ts';
import { halfWidth, numbersIn, signed, thousandsPointed } from './writtenNumber.ts';

const within = <const Name extends string>(name: Name, least: number, most: number, otherwise: PlainFault) =>
  v.pipe(v.number(otherwise), v.minValue(least, otherwise), v.maxValue(most, otherwise), v.brand(name));

/** Focal length over entrance pupil, for a subject at infinity, as engraved on the lens. */
export const FNumber = within('FNumber', 0.7, 128, 'no aperture');
export type FNumber = v.InferOutput<typeof FNumber>;

/** Size on the sensor over size at the target. */
export const Magnification = within('Magnification', 0.0002, 10, 'no magnification');
export type Magnification = v.InferOutput<typeof Magnification>;

/** An angle, with its sign. */
export const Degrees = within('Degrees', -90, 90, 'no angle');
export type Degrees = v.InferOutput<typeof Degrees>;

/** Exposure value, for the speed that the text beside it names. */
export const Ev = within('Ev', -20, 40, 'no light value');
export type Ev = v.InferOutput<typeof Ev>;

export type Lux = number & v.Brand<'Lux'>;

export const fNumber = (value: number): FNumber => value as FNumber;
export const magnification = (value: number): Magnification => value as Magnification;
export const degrees = (value: number): Degrees => value as Degrees;
export const ev = (value: number): Ev => value as Ev;
export const lux = (value: number): Lux => value as Lux;

export const radians = (angle: Degrees): number => (angle * Math.PI) / 180;
export const fromRadians = (angle: number): Degrees => degrees((angle * 180) / Math.PI);

/** A number as a person types it: a point or a comma before the decimals; null when it is none, or when it can mean two. */
export function readNumber(text: string): number | null {
  const { sign, digits } = signed(text);
  const [one, ...others] = numbersIn(digits);
  return one === undefined || others.length > 0 ? null : sign * one;
}

/** How many: a comma or a point before exactly three digits parts thousands. Null when it is no number. */
export function readCount(text: string): number | null {
  const digits = halfWidth(text);
  return thousandsPointed(digits) ?? numbersIn(digits).at(-1) ?? null;
}
