// How far before and behind the target things still pass for sharp. Thin lens with a pupil ratio P (exit over
// entrance):
// (J. Conrad, Depth of Field in Depth, 2004-06; S. F. Ray, Applied Photographic Optics, 3rd ed. 2002, ch. 22).
// With P = 1 they are the textbook limits s(H - f)/(H + s - 2f) and s(H - f)/(H - s), s from the lens.
import { millimetres, type Millimetres } from '../units.ts';
import type { FNumber, Magnification } from './quantity.ts';

/** What the blur is made of. */
export interface Blur {
  readonly aperture: FNumber;
  /** The circle of confusion. */
  readonly confusion: Millimetres;
  /** Exit pupil over entrance pupil; 1 where it is not known. */
  readonly pupilRatio?: number;
}

/** Lengths from the target; behind it the depth may never end. */
export interface DepthOfField {
  readonly front: Millimetres;
  readonly behind: Millimetres | 'infinite';
  readonly total: Millimetres | 'infinite';
}

/** Diameter of the tolerated blur as an f-number's length: N·c. */
const tolerance = ({ aperture, confusion }: Blur): number => aperture * confusion;

const pupilFactor = ({ pupilRatio = 1 }: Blur, m: number): number => 1 + m / pupilRatio;

/** The distance from the lens beyond which, focused there, everything behind is sharp. */
export const hyperfocal = (blur: Blur, focalLength: Millimetres): Millimetres => millimetres(focalLength ** 2 / tolerance(blur) + focalLength);

/** With the magnification known, thin or measured. The focal length only tells front and behind apart. */
export function depthOfField(blur: Blur, m: Magnification, focalLength: Millimetres): DepthOfField {
  const reach = tolerance(blur) * pupilFactor(blur, m);
  const skew = (m * tolerance(blur)) / focalLength;
  const front = millimetres(reach / (m * m + skew));
  // A hair of rounding must not turn the hyperfocal distance into a far limit of light years.
  if (m * m - skew <= m * m * 1e-12) return { front, behind: 'infinite', total: 'infinite' };
  const behind = millimetres(reach / (m * m - skew));
  return { front, behind, total: millimetres(front + behind) };
}

/** Nearest and farthest sharp thing, as distances from where `distance` to the target is measured from. */
export const limitsOfField = (
  { front, behind }: DepthOfField,
  distance: Millimetres,
): { readonly near: Millimetres; readonly far: Millimetres | 'infinite' } => ({
  near: millimetres(distance - front),
  far: behind === 'infinite' ? behind : millimetres(distance + behind),
});

/** Share of the depth on its own side that a focus error uses: 1 at the limit. Positive lies behind the target. */
export function shareOfDepth(errorAtTarget: number, { front, behind }: DepthOfField): number {
  if (errorAtTarget <= 0) return -errorAtTarget / front;
  return behind === 'infinite' ? 0 : errorAtTarget / behind;
}
