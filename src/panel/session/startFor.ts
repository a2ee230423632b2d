// Where the dial of the body stands when a sweep opens.
import { isOnScale, nearestOn, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';

/** The value the body is set to: the one entered last, or the one nearest zero. */
export const startFor = (scale: Scale, entered: number | undefined): Steps =>
  entered !== undefined && isOnScale(scale, entered) ? entered : nearestOn(scale, 0);
