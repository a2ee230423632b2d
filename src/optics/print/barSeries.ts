// The widths that a bar may have: a geometric series, so that a few dots can say which one a print was drawn with. Every
// length on the target follows from it. The steps are small enough that no field is drawn much larger than it need be.
import { millimetres, type Millimetres } from '../../units.ts';

/** A field of 180 mm in 63 bars, about the widest that either paper holds, is one of the series. */
const ANCHOR = { index: 206, bar: 180 / 63 };
const RATIO = 1.011;
/** As many as nine dots can tell. */
const COUNT = 512;

/** The width in millimetres at a place in the series, counted from 0. */
export const barAt = (index: number): Millimetres => millimetres(ANCHOR.bar * RATIO ** (index - ANCHOR.index));

/** The place of the narrowest width that is not narrower than this; null beyond the series. */
export function barIndex(least: Millimetres): number | null {
  const index = Math.max(0, Math.ceil(ANCHOR.index + Math.log(least / ANCHOR.bar) / Math.log(RATIO) - 1e-9));
  return index < COUNT ? index : null;
}
