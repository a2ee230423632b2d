// Whether a file still has the size that its camera wrote into it: what was made smaller shows the sharpness of the smaller picture, and of what was
// cropped nobody knows where the optical axis met it, nor how large its pixels were.
import type { PictureSize } from '../kit/photograph/jpeg.ts';

export type ChangedSize = { readonly is: 'as taken' } | { readonly is: 'resized'; /** Of each side. */ readonly share: number } | { readonly is: 'cropped' };

/** Cameras leave a few pixels of the border out, and whole ones must do for a share (common practice, no source). */
const ALIKE = 0.01;

/** Sizes in pixels, as stored or turned. A part with the shape of the whole cannot be told from a smaller whole. */
export function changedSize(written: PictureSize, now: PictureSize): ChangedSize {
  const [long, short] = [Math.max, Math.min].map((of) => of(now.width, now.height) / of(written.width, written.height)) as [number, number];
  if (Math.abs(long / short - 1) > ALIKE) return { is: 'cropped' };
  const share = Math.sqrt(long * short);
  return Math.abs(share - 1) > ALIKE ? { is: 'resized', share } : { is: 'as taken' };
}
