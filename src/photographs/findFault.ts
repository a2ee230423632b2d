// Why a print is not found in a picture, as data.
import type { MarkName } from '../optics/print/marks.ts';
import type { Degrees } from '../optics/quantity.ts';
import type { Plane } from './plane.ts';

export type FindFault =
  | { readonly is: 'no print' }
  /** Three marks of one are there. */
  | { readonly is: 'half a print'; readonly missing: readonly MarkName[] }
  | { readonly is: 'two prints' }
  /** Its marks are so few pixels wide that their dots cannot be told. */
  | { readonly is: 'print too small'; readonly side: number }
  | { readonly is: 'print too tilted'; readonly tilt: Degrees }
  /** Printed before targets had marks with dots. */
  | { readonly is: 'older print' }
  /** Its marks are in place, but blur, glare or a cover keeps their dots from being read. */
  | { readonly is: 'marks unread' }
  | { readonly is: 'picture blown' }
  | { readonly is: 'picture black' };

/** Narrower marks are told to be too small; where dots are unread at this size or more, it is not for want of pixels. */
export const READABLE_SIDE = 18;

/** A picture nearly all of whose pixels clip, or hold nothing, explains itself. */
export function unlit({ light }: Plane): FindFault | null {
  let [blown, black, looked] = [0, 0, 0];
  for (let pixel = 0; pixel < light.length; pixel += 7) {
    looked++;
    if (light[pixel]! > 0.97) blown++;
    else if (light[pixel]! < 0.004) black++;
  }
  if (blown > 0.9 * looked) return { is: 'picture blown' };
  return black > 0.97 * looked ? { is: 'picture black' } : null;
}
