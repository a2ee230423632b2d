// The fields that may stand between four marks which are so much farther apart down than across. Most prints keep the least white
// that there is; what the distances say is only about right, for a print that is tilted looks shorter.
import type { BarCount } from '../optics/print/sequence.ts';
import { fieldPattern, type Pattern } from './pattern.ts';

/** A field in focus agrees to 0.8 and more, one under much blur to 0.4; chance, among 400 places, seldom to 0.2. */
export const FIELD_AGREES = 0.3;

/** `square` is a mark's box and `gaps` the white beside the field, least and most, both in bars. */
export function fieldPatterns(bars: BarCount, square: number, gaps: readonly [number, number]): (ratio: number) => readonly Pattern[] {
  const known = new Map<number, Pattern>();
  const withGap = (gap: number): Pattern => {
    const pattern = known.get(gap) ?? fieldPattern(bars, square, gap);
    known.set(gap, pattern);
    return pattern;
  };
  return (ratio) => {
    const measured = ((bars - square) * ratio - bars - square) / 2;
    const rounded = Math.round(4 * Math.max(gaps[0], Math.min(gaps[1], measured))) / 4;
    return [...new Set([gaps[0], rounded])].map(withGap);
  };
}
