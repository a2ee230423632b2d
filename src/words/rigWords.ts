// What stands on the drawing of the rig, and how it is read out.
import type { LightVerdict } from '../optics/light.ts';
import type { Degrees, Ev } from '../optics/quantity.ts';
import type { Answer, View } from '../optics/sketch/scene.ts';
import type { DistanceUnit } from '../optics/writtenLength.ts';
import type { Millimetres } from '../units.ts';

export interface RigWords {
  readonly views: Readonly<Record<View, string>>;
  /** `multiple`: of the focal length. */
  readonly stands: (distance: Millimetres, multiple: number, unit: DistanceUnit) => string;
  readonly light: {
    readonly found: (ev: Ev, verdict: LightVerdict) => string;
    /** Not read yet. */
    readonly wanted: (least: Ev) => string;
  };
  /** `tilt`: as it was measured; null where it was not. */
  readonly square: (allowed: Degrees, tilt: Degrees | null) => string;
  readonly squareByEye: string;
  readonly prints: (field: Millimetres, sheets: number) => string;
  readonly depth: (front: Millimetres, behind: Millimetres | 'infinite', unit: DistanceUnit) => string;
  /** All of it, for those who do not see it. */
  readonly said: (answers: readonly (readonly [Answer, string])[]) => string;
}
