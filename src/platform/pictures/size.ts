// Which pictures can be read at all. The limit keeps a picture, decoded and as a plane, below what a browser gives a page:
// four bytes a pixel for each of the two (100 megapixels: 800 MB).
import type { PictureSize } from '../../kit/photograph/jpeg.ts';

const MOST_PIXELS = 110_000_000;
/** In less than this no target can be told from its surroundings (common practice, no source). */
const LEAST_SIDE = 64;

export function sizeFault({ width, height }: PictureSize): 'too large' | 'too small' | null {
  if (width * height > MOST_PIXELS) return 'too large';
  return Math.min(width, height) < LEAST_SIDE ? 'too small' : null;
}
