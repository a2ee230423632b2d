// One shot as it is set up: the rig, the lens and how the picture is kept. Lengths in millimetres; the distance runs from the lens
// to the middle of the target along the optical axis.

export interface Pose {
  /** Degrees the target leans about its level axis (upper side away), about its upright axis (right side away), and turns in its plane. */
  readonly lean: number;
  readonly swing: number;
  readonly roll: number;
  /** Where the target's middle lies off the optical axis: right and down. */
  readonly right: number;
  readonly down: number;
}
export const SQUARE: Pose = { lean: 0, swing: 0, roll: 0, right: 0, down: 0 };

export interface LensInUse {
  readonly focalLength: number;
  readonly aperture: number;
  readonly distance: number;
  /** How far behind the target the lens is focused, along the axis. */
  readonly focusError: number;
  /** Standard deviation of what the lens and the filter before the sensor blur beside defocus and diffraction, in pixels. */
  readonly aberration: number;
}

export interface Sensel {
  readonly width: number;
  readonly height: number;
  readonly pitch: number;
  /** Electrons that white fills a green pixel with, and the noise of reading, in electrons. */
  readonly fullWell: number;
  readonly readNoise: number;
}

interface Development {
  /** Linear light of white paper, 1 clips. */
  readonly exposure: number;
  /** Share of the unsharp mask that is added; 0 leaves the picture as it is. */
  readonly sharpening: number;
}

export interface Shot {
  readonly pose: Pose;
  readonly lens: LensInUse;
  readonly sensor: Sensel;
  readonly development: Development;
  /** How the camera moved while it exposed, in pixels. */
  readonly motion: { readonly x: number; readonly y: number };
}
