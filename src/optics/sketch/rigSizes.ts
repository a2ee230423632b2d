// What the sketch draws, in millimetres. Body and lens are drawn as large as such bodies and lenses are (from memory): nobody
// is asked for their sizes.
import type { Millimetres } from '../../units.ts';
import type { Lighting } from '../lamps.ts';
import type { Degrees, FNumber } from '../quantity.ts';

/** The print as it hangs there, its ramp below it, and what follows from the aperture. */
export interface AtTarget {
  /** Of the whole drawing, which may run over several sheets. */
  readonly width: Millimetres;
  readonly height: Millimetres;
  /** Side of the square field of bars. */
  readonly field: Millimetres;
  /** Along the face of the ramp, from its zero line. */
  readonly ramp: { readonly above: number; readonly below: number; readonly width: number; readonly lean: Degrees };
  readonly depth: { readonly front: Millimetres; readonly behind: Millimetres | 'infinite' };
  /** Null where none needs to be watched for. */
  readonly allowedTilt: Degrees | null;
}

export interface RigSizes {
  /** From the film plane to the target. */
  readonly distance: Millimetres;
  /** From the film plane to the front of the lens, and across it there. */
  readonly lens: { readonly reach: number; readonly across: number };
  readonly lighting: Lighting;
  /** Null until the aperture is known. */
  readonly target: AtTarget | null;
}

/** Of a full-size body: from the axis of the lens, and from the film plane to the back and to the mount. */
export const BODY = { back: 30, mount: 44, top: 62, base: 55, half: 70 } as const;
/** What hangs there while the target is not known: a sheet of paper (ISO 216, A4). */
export const PAPER = { width: 210, height: 297 } as const;

/** `reach`: from the film plane to the front of the lens, where it was measured; `aperture`: null while it is not known. */
export const lensSizes = (focalLength: Millimetres, aperture: FNumber | null, reach: Millimetres | null): RigSizes['lens'] => ({
  reach: Math.max(BODY.mount + 10, reach ?? BODY.mount + Math.max(45, 0.8 * focalLength)),
  across: Math.max(65, aperture === null ? 0 : (1.1 * focalLength) / aperture + 8),
});

/** The ramp leans away from the camera: how far it reaches down, and behind and before the target. */
export function leaning({ ramp }: AtTarget): { readonly down: number; readonly behind: number; readonly before: number } {
  const lean = (ramp.lean * Math.PI) / 180;
  return { down: (ramp.above + ramp.below) * Math.cos(lean), behind: ramp.above * Math.sin(lean), before: ramp.below * Math.sin(lean) };
}
