// A band as entering needs it: what was measured of one situation, and how a value would stand in it. The edges lie half
// a step outside the outermost values that held, so a value in the band uses less than all of the half-band.
import type { Scale } from '../../sweep/scale.ts';
import type { Millimetres } from '../../units.ts';
import type { Measured } from '../measured.ts';

export interface Band {
  /** The situation. */
  readonly id: string;
  readonly focalLength: Millimetres;
  readonly distance: Millimetres;
  readonly low: number;
  readonly high: number;
  readonly centre: number;
  /** Half the width, never zero. */
  readonly half: number;
}

/** How a value stands in a band. */
export interface Fit {
  readonly band: Band;
  /** The value less the centre, in steps. */
  readonly error: number;
  /** The size of the error as a share of the half-band. */
  readonly share: number;
  readonly inside: boolean;
  /** Steps past the nearer end; 0 inside. */
  readonly past: number;
}

/** Null where both ends are not known: only a value, or only a bound. */
export function bandOf({ subject, low, high, centre }: Measured, scale: Scale): Band | null {
  if (low === null || high === null) return null;
  const { situation: id, focalLength, distance } = subject;
  return { id, focalLength, distance, low, high, centre: centre ?? (low + high) / 2, half: (high - low + scale.step) / 2 };
}

export function fitOf(value: number, band: Band): Fit {
  const error = value - band.centre;
  const past = Math.max(0, band.low - value, value - band.high);
  return { band, error, share: Math.abs(error) / band.half, inside: past === 0, past };
}

/** The values that lie in every band; null where no value does. */
export function commonRange(bands: readonly Pick<Band, 'low' | 'high'>[]): { low: number; high: number; middle: number } | null {
  const low = Math.max(...bands.map((band) => band.low));
  const high = Math.min(...bands.map((band) => band.high));
  return low <= high ? { low, high, middle: (low + high) / 2 } : null;
}
