// The window over the line spread: what lies far from the edge is noise and uneven light. Flat over the edge's own blur and falling
// as a cosine to nothing at the ends (F. J. Harris, On the use of windows for harmonic analysis, Proc. IEEE 66:51, 1978, eq. 38), since
// a window that falls from the middle on narrows what it is laid over: Hann's over six standard deviations to either side tells a
// Gaussian 7 % too sharp.
import { BINS } from './edgeSpread.ts';

/** Weight of each bin, of a strip that reaches so far and is flat so far to either side; in pixels. */
export function edgeWindow(reach: number, flat: number): Float64Array {
  const bins = 2 * reach * BINS;
  return Float64Array.from({ length: bins }, (_, bin) => {
    // The outermost bins have no neighbour to be derived with.
    if (bin === 0 || bin === bins - 1) return 0;
    const away = Math.abs(bin + 0.5 - bins / 2) / BINS;
    return away <= flat ? 1 : 0.5 * (1 + Math.cos((Math.PI * (away - flat)) / (reach - flat)));
  });
}
