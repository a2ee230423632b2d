// The whole numbers a body lets one dial in. Everything that steps, clamps or lists corrections asks here,
// so that a body with a shorter or a coarser scale needs no other code.
import { steps, type Steps } from '../units.ts';
import type { Scale } from './storedScale.ts';

export type { Scale } from './storedScale.ts';

/** The scale most bodies have (common practice, no source). */
export const USUAL_SCALE: Scale = { min: steps(-20), max: steps(20), step: 1 };

/** Every correction on the scale, lowest first. */
export function valuesOf(scale: Scale): Steps[] {
  const count = Math.round((scale.max - scale.min) / scale.step) + 1;
  return Array.from({ length: count }, (_, index) => steps(scale.min + index * scale.step));
}

/** Half the scale's length, in steps of the scale: the yardstick of the priors. */
export const halfRange = (scale: Scale): number => (scale.max - scale.min) / (2 * scale.step);

/** True when the body can be set to this value. */
export const isOnScale = (scale: Scale, value: number): value is Steps => value >= scale.min && value <= scale.max && (value - scale.min) % scale.step === 0;

/** The value of the scale nearest to any number. */
export function nearestOn(scale: Scale, value: number): Steps {
  const index = Math.round((value - scale.min) / scale.step);
  const last = (scale.max - scale.min) / scale.step;
  return steps(scale.min + Math.min(last, Math.max(0, index)) * scale.step);
}

/** The value of the scale nearest to a number; null where that lies more than half a step beyond the scale. */
export function nearestWithin(scale: Scale, value: number): Steps | null {
  return value < scale.min - scale.step / 2 || value > scale.max + scale.step / 2 ? null : nearestOn(scale, value);
}

/** The next value up or down, or null at the limit. */
export function neighbour(scale: Scale, value: Steps, direction: 1 | -1): Steps | null {
  const next = value + direction * scale.step;
  return isOnScale(scale, next) ? next : null;
}

/** A correction as it is written: always with its sign, and a true minus. Whole: what may lie between two corrections is for `write.signed`. */
export function writeSteps(value: number): string {
  if (value === 0) return '0';
  return value > 0 ? `+${value}` : `\u2212${Math.abs(value)}`;
}
