// One picture, from its pixels to where focus fell: both prints are found, the distance follows from how large the target comes out, and the blur
// along the ramp tells the rest.
import { failed, got, type Result } from '../result.ts';
import { millimetres, type Millimetres } from '../units.ts';
import { TRUE_SIZE } from '../optics/print/printCheck.ts';
import type { FNumber } from '../optics/quantity.ts';
import { NORMAL_MARGIN } from './withInterval.ts';
import type { FindFault } from './findFault.ts';
import { WIDEST } from './edgeBlur.ts';
import { findRamp, type FoundRamp } from './findRamp.ts';
import { findTarget, type FoundTarget } from './findTarget.ts';
import { boxOf, type PixelSource } from './pixelSource.ts';
import { measureRamp, type RampFault, type RampMeasure } from './ramp.ts';
import { rampEdges } from './rampEdges.ts';
import { rampPose, type PrintedOptics } from './rampPose.ts';
import { lookAt } from './squaresSeen.ts';

/** What of the camera must be known, from the kit or the file. */
export interface PictureOptics {
  readonly focalLength: Millimetres;
  readonly aperture: FNumber;
  readonly pitch: Millimetres;
}

export type FocusFault = { readonly print: 'target' | 'ramp'; readonly fault: FindFault } | { readonly print: 'ramp'; readonly fault: RampFault };

/** The whole picture, not a part cut out: the optical axis is taken to meet its middle. Its prints came out at true size. */
export function focusInPicture(picture: PixelSource, { focalLength, aperture, pitch }: PictureOptics): Result<RampMeasure, FocusFault> {
  const seen = lookAt(picture);
  const target = findTarget(seen);
  if (!target.ok) return failed({ print: 'target', fault: target.fault });
  const ramp = findRamp(seen);
  if (!ramp.ok) return failed({ print: 'ramp', fault: ramp.fault });
  // Thin lens: m = f/(s - f), s from the lens.
  const distance = millimetres(focalLength * (1 + 1 / (target.value.scale * pitch)));
  const optics = { focalLength, aperture, pitch, distance, printed: TRUE_SIZE };
  const measured = focusOnRamp(picture, target.value, ramp.value, optics);
  return measured.ok ? measured : failed({ print: 'ramp', fault: measured.fault });
}

/** The same, once both prints are found. */
export function focusOnRamp(picture: PixelSource, target: FoundTarget, ramp: FoundRamp, optics: PrintedOptics): Result<RampMeasure, RampFault> {
  const pose = rampPose(ramp, target, optics, picture);
  if (pose === null) return failed({ is: 'ramp hidden', seen: 0 });
  const edges = rampEdges(ramp.layout, pose.place);
  const plane = picture.around(
    boxOf(
      edges.flatMap(({ from, to }) => [from, to]),
      WIDEST + 2,
    ),
  );
  const measured = measureRamp(plane, edges, optics);
  return measured.ok ? got(widened(measured.value, pose.doubt)) : measured;
}

/** The ramp's own place is uncertain, too: its doubt is added in square to either side. */
function widened(measure: RampMeasure, doubt: number): RampMeasure {
  const { error, interval } = measure;
  const low = error - Math.hypot(error - interval.low, NORMAL_MARGIN * doubt);
  const high = error + Math.hypot(interval.high - error, NORMAL_MARGIN * doubt);
  return { ...measure, interval: { low, high }, lies: low > 0 ? 'behind' : high < 0 ? 'in front' : 'on the target' };
}
