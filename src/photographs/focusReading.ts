// Where focus fell in one picture, and whether that passes for sharp: the ramp's measure held against the depth of field. The
// distance is the one at which a thin lens shows the target as large as it is in the picture.
import { depthOfField, shareOfDepth, type DepthOfField } from '../optics/depthOfField.ts';
import { lensToTarget } from '../optics/magnification.ts';
import type { Point } from '../optics/print/drawing.ts';
import { magnification } from '../optics/quantity.ts';
import { confusion, pixelPitch, type Sensor } from '../optics/sensor.ts';
import { stepAtTarget, USUAL_STEP_WORTH } from '../optics/stepWorth.ts';
import { failed, got, type Result } from '../result.ts';
import { millimetres, type Millimetres } from '../units.ts';
import type { CameraFacts, PictureFacts } from './cameraFacts.ts';
import { changedSize } from './changedSize.ts';
import type { FindFault } from './findFault.ts';
import { findRamp } from './findRamp.ts';
import type { FoundTarget } from './findTarget.ts';
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
  | { readonly is: 'camera unknown'; readonly lacking: readonly Needed[] }
  /** After it was taken: the optical axis need not meet its middle, nor the sensor be as wide. */
  | { readonly is: 'cropped' }
  /** It has not the sensor's shape: a part was cut off, or it shows more than a picture. How large its pixels are is not known then. */
  | { readonly is: 'not the whole picture' }
  | { readonly is: 'too few pixels' }
  | { readonly is: 'ramp unread'; readonly why: RampFault };

/** What must be known of the camera. */
type Needed = 'focalLength' | 'aperture' | 'sensor';

export function readFocus(seen: SquaresSeen, target: FoundTarget, facts: PictureFacts): Result<FocusReading, FocusUntold> {
  const found = findRamp(seen);
  if (!found.ok) return failed({ is: 'no ramp', why: found.fault });
  const { focalLength, aperture, sensor, frame, printed } = facts;
  if (focalLength === null || aperture === null || sensor === null) return failed({ is: 'camera unknown', lacking: lackingOf(facts) });
  if (frame !== null && changedSize(frame, seen.picture).is === 'cropped') return failed({ is: 'cropped' });
  if (!hasShapeOf(sensor, seen.picture)) return failed({ is: 'not the whole picture' });
  // A picture held upright has the sensor's longer side upright, too.
  const pitch = pixelPitch(sensor, Math.max(seen.picture.width, seen.picture.height));
  if (!pitch.ok) return failed({ is: 'too few pixels' });
  // A print that came out smaller stands nearer, or is seen through a longer lens, than a true one that looks as large.
  const m = magnification((target.scale * pitch.value) / printed);
  const { marks } = found.value;
  const optics = { focalLength, aperture, distance: lensToTarget(focalLength, m), pitch: pitch.value, printed };
  const ramp = focusOnRamp(seen.picture, target, found.value, optics);
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

/** Sizes of sensors are told to a tenth of a millimetre, and a camera leaves out a few pixels at the border: about a share of so much. */
const SAME_SHAPE = 0.03;

function hasShapeOf(sensor: Sensor, { width, height }: { readonly width: number; readonly height: number }): boolean {
  const [own, theirs] = [sensor, { width, height }].map((frame) => Math.max(frame.width, frame.height) / Math.min(frame.width, frame.height));
  return own !== undefined && theirs !== undefined && Math.abs(own / theirs - 1) <= SAME_SHAPE;
}

function sharpness({ interval: { low, high } }: RampMeasure, { front, behind }: DepthOfField): FocusReading['is'] {
  const far = behind === 'infinite' ? millimetres(Infinity) : behind;
  if (low >= -front && high <= far) return 'sharp';
  return high < -front || low > far ? 'not sharp' : 'not sure';
}

const lackingOf = (facts: CameraFacts): Needed[] => (['focalLength', 'aperture', 'sensor'] as const).filter((each) => facts[each] === null);
