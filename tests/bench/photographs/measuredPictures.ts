// What the measurement makes of drawn pictures, beside the truth.
import { millimetres } from '../../../src/units.ts';
import { fNumber } from '../../../src/optics/quantity.ts';
import { focusInPicture, type FocusFault } from '../../../src/photographs/focusInPicture.ts';
import { wholePicture } from '../../../src/photographs/pixelSource.ts';
import { planeOf } from '../../../src/photographs/plane.ts';
import { seededRandom } from '../../../src/practice/random.ts';
import { photograph } from '../../photographs/camera/photograph.ts';
import { drawShot, type DrawnShot } from './drawnShots.ts';

export interface MeasuredPicture {
  readonly drawn: DrawnShot;
  readonly found: boolean;
  /** Shares of the whole depth of field: the error of the focus error, and half its stated interval. Null where it was refused. */
  readonly off: number | null;
  readonly margin: number;
  readonly holds: boolean;
  readonly fault: FocusFault | null;
}

export function measurePicture(seed: number): MeasuredPicture {
  const drawn = drawShot(seededRandom(seed));
  const { rig, shot } = drawn;
  const picture = photograph(rig.sheets, shot, seed);
  const { focalLength, aperture, focusError } = shot.lens;
  const answer = focusInPicture(wholePicture(planeOf(picture.rgba, picture.width, picture.height)), {
    focalLength: millimetres(focalLength),
    aperture: fNumber(aperture),
    pitch: millimetres(shot.sensor.pitch),
  });
  if (!answer.ok) return { drawn, found: !isFinding(answer.fault), off: null, margin: NaN, holds: false, fault: answer.fault };
  const whole = rig.depth.total === 'infinite' ? Infinity : rig.depth.total;
  const { error, interval } = answer.value;
  return {
    drawn,
    found: true,
    off: Math.abs(error - focusError) / whole,
    margin: (interval.high - interval.low) / 2 / whole,
    holds: interval.low <= focusError && interval.high >= focusError,
    fault: null,
  };
}

/** Whether it was the finding that failed. */
const isFinding = ({ print, fault }: FocusFault): boolean => print === 'target' || !MEASURING.has(fault.is);
const MEASURING = new Set<string>(['ramp hidden', 'ramp blown out', 'focus off the ramp', 'ramp too flat', 'camera moved']);
