// The figures of a finished sweep as they are written.
import { writeSteps } from '../../sweep/scale.ts';
import type { Seconds } from '../../units.ts';

export function inMinutes(time: Seconds): string {
  const whole = Math.round(time);
  if (whole < 60) return `${whole} s`;
  return whole < 3600 ? `${Math.floor(whole / 60)} min ${whole % 60} s` : `${Math.floor(whole / 3600)} h ${Math.floor((whole % 3600) / 60)} min`;
}

/** A place on the scale between its values, to a tenth of a correction. */
export const inTenths = (value: number): string => writeSteps(Number(value.toFixed(1)));
