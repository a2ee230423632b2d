// Bands for the tests of what to enter.
import type { Band } from '../../../src/logbook/entering/band.ts';
import { millimetres } from '../../../src/units.ts';

interface More {
  readonly step?: number;
  readonly focalLength?: number;
  readonly distance?: number;
}

export const bandAt = (id: string, low: number, high: number, { step = 1, focalLength = 50, distance = 2500 }: More = {}): Band => ({
  id,
  focalLength: millimetres(focalLength),
  distance: millimetres(distance),
  low,
  high,
  centre: (low + high) / 2,
  half: (high - low + step) / 2,
});
