// Cameras and lenses show rounded numbers: f/11 stands for 11.31, 1/60 for 1/64. The exact ones are whole powers of
// the square root of two with thirds and halves between (ISO 517:2008 for apertures). A number that is no such stop
// is kept as it is.
import { seconds, type Seconds } from '../units.ts';
import { fNumber, type FNumber } from './quantity.ts';

/** The stop nearest in proportion, where the shown number lies within the rounding. */
function exact(shown: number, perDoubling: readonly number[], rounding: number): number {
  const power = Math.log2(shown);
  const nearest = perDoubling
    .map((parts) => Math.round(power * parts) / parts)
    .reduce((best, next) => (Math.abs(next - power) < Math.abs(best - power) ? next : best));
  return Math.abs(nearest - power) <= Math.log2(rounding) ? 2 ** nearest : shown;
}

/** Two stops to a doubling: thirds 2^(k/6), halves 2^(k/4). Shown numbers are up to 3 % off (f/22). */
export const exactAperture = (shown: FNumber): FNumber => fNumber(exact(shown, [6, 4], 1.03));

/** One stop to a doubling. Shown times are up to 7 % off (1/60, 15 s). */
export const exactShutter = (shown: Seconds): Seconds => seconds(exact(shown, [3, 2], 1.07));

/** Counted from 100. */
export const exactIso = (shown: number): number => 100 * exact(shown / 100, [3, 2], 1.03);
