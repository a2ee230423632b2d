// Where focus fell in one picture, and whether that passes for sharp: the ramp's measure held against the depth of field. The
// distance is the one at which a thin lens shows the target as large as it is in the picture.
import { depthOfField, shareOfDepth, type DepthOfField } from '../optics/depthOfField.ts';
import { lensToTarget } from '../optics/magnification.ts';
import type { Point } from '../optics/print/drawing.ts';
import { magnification } from '../optics/quantity.ts';
import { confusion, pixelPitch } from '../optics/sensor.ts';
import { stepAtTarget, USUAL_STEP_WORTH } from '../optics/stepWorth.ts';
import { failed, got, type Result } from '../result.ts';
import { millimetres, type Millimetres } from '../units.ts';
import type { CameraFacts } from './cameraFacts.ts';
import type { FindFault } from './findFault.ts';
import { findRamp } from './findRamp.ts';
import type { FoundTarget } from './findTarget.ts';
import type { Plane } from './plane.ts';
import { focusOnRamp } from './focusInPicture.ts';
import type { RampFault, RampMeasure } from './ramp.ts';
import type { SquaresSeen } from './squaresSeen.ts';

export interface FocusReading {
  readonly ramp: RampMeasure;
  readonly depth: DepthOfField;
  /** Share of the depth of field on its own side: 1 at the limit of what passes for sharp. */
  readonly share: number;
  /** Millimetres at the target that one step of correction moves focus, an estimate. */
  readonly step: Millimetres;
  /** Told only where the whole interval bears it out. */
  readonly is: 'sharp' | 'not sharp' | 'not sure';
  /** Middles of the ramp's marks in pixels, clockwise from the upper left one. */
  readonly outline: readonly Point[];
}

export type FocusUntold =
  | { readonly is: 'no target' }
  | { readonly is: 'no ramp'; readonly why: FindFault }
  | { readonly is: 'camera unknown'; readonly lacking: readonly (keyof CameraFacts)[] }
  | { readonly is: 'too few pixels' }
  | { readonly is: 'ramp unread'; readonly why: RampFault };

export function readFocus(plane: Plane, seen: SquaresSeen, target: FoundTarget, facts: CameraFacts): Result<FocusReading, FocusUntold> {
  const found = findRamp(plane, seen);
  if (!found.ok) return failed({ is: 'no ramp', why: found.fault });
  const { focalLength, aperture, sensor } = facts;
  if (focalLength === null || aperture === null || sensor === null) return failed({ is: 'camera unknown', lacking: lackingOf(facts) });
  // A picture held upright has the sensor's longer side upright, too.
  const pitch = pixelPitch(sensor, Math.max(plane.width, plane.height));
  if (!pitch.ok) return failed({ is: 'too few pixels' });
  const m = magnification(target.scale * pitch.value);
  const { marks } = found.value;
  const optics = { focalLength, aperture, distance: lensToTarget(focalLength, m), pitch: pitch.value };
  const ramp = focusOnRamp(plane, target, found.value, optics);
  if (!ramp.ok) return failed({ is: 'ramp unread', why: ramp.fault });
  const blur = { aperture, confusion: confusion(sensor, { by: 'diagonal' }) };
  const depth = depthOfField(blur, m, focalLength);
  const [upperLeft, upperRight, lowerLeft, lowerRight] = marks;
  const outline = [upperLeft, upperRight, lowerRight, lowerLeft].filter((point) => point !== undefined);
  return got({
    ramp: ramp.value,
    depth,
    share: shareOfDepth(ramp.value.error, depth),
    step: stepAtTarget(blur, USUAL_STEP_WORTH, m),
    is: sharpness(ramp.value, depth),
    outline,
  });
}

function sharpness({ interval: { low, high } }: RampMeasure, { front, behind }: DepthOfField): FocusReading['is'] {
  const far = behind === 'infinite' ? millimetres(Infinity) : behind;
  if (low >= -front && high <= far) return 'sharp';
  return high < -front || low > far ? 'not sharp' : 'not sure';
}

const lackingOf = (facts: CameraFacts): (keyof CameraFacts)[] => (['focalLength', 'aperture', 'sensor'] as const).filter((each) => facts[each] === null);
