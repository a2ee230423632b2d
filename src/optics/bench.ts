// Everything a screen shows of one rig, reckoned in one place: how large the target appears, how deep the focus is,
// what a step is worth there, how square it must stand and how large the target is drawn.
import type { Millimetres } from '../units.ts';
import { got, type Result } from '../result.ts';
import { depthOfField, hyperfocal, type Blur, type DepthOfField } from './depthOfField.ts';
import { airyShare, depthOfFocus } from './depthOfFocus.ts';
import type { BenchFault } from './fault.ts';
import { lensToTarget, shortenedFocalLength, thinLensMagnification, type MeasuredDistance } from './magnification.ts';
import type { Degrees, FNumber, Magnification } from './quantity.ts';
import { confusion, type ConfusionRule, type Sensor } from './sensor.ts';
import { allowedTilt } from './squareness.ts';
import { stepAtTarget, type StepWorth } from './stepWorth.ts';
import { measureTarget, type TargetMeasure } from './print/measure.ts';

/** One rig. A converter is counted in already: see `focalLengthWith` and `apertureWith`. */
export interface Rig {
  readonly focalLength: Millimetres;
  readonly aperture: FNumber;
  readonly distance: MeasuredDistance;
  /** From the target's scale in a photograph; null while it is not measured. */
  readonly measured: Magnification | null;
  readonly sensor: Sensor;
  readonly pitch: Millimetres;
  readonly confusionRule: ConfusionRule;
  readonly area: Millimetres;
  readonly worth: StepWorth;
}

export interface Bench {
  readonly magnification: Magnification;
  readonly magnificationIs: 'measured' | 'thin lens';
  /** As it really is at this focus, where the magnification was measured. */
  readonly focalLength: Millimetres;
  /** From the lens to the target, for perspective. */
  readonly fromLens: Millimetres;
  readonly blur: Blur;
  readonly depth: DepthOfField;
  readonly depthOfFocus: Millimetres;
  readonly hyperfocal: Millimetres;
  /** Airy disc over circle of confusion. */
  readonly airy: number;
  /** One step at the target: an estimate. */
  readonly step: Millimetres;
  readonly allowedTilt: Degrees;
  readonly target: Result<TargetMeasure, BenchFault>;
}

/** The whole bench; a target that cannot be drawn does not keep the rest from being known. */
export function benchOf(rig: Rig): Result<Bench, BenchFault> {
  const known = rig.measured === null ? thinLensMagnification(rig.focalLength, rig.distance) : got(rig.measured);
  if (!known.ok) return known;
  const m = known.value;
  const focalLength = rig.measured === null ? rig.focalLength : shortenedFocalLength(rig.distance, m);
  const blur: Blur = { aperture: rig.aperture, confusion: confusion(rig.sensor, rig.confusionRule) };
  return got({
    magnification: m,
    magnificationIs: rig.measured === null ? 'thin lens' : 'measured',
    focalLength,
    fromLens: lensToTarget(focalLength, m),
    blur,
    depth: depthOfField(blur, m, focalLength),
    depthOfFocus: depthOfFocus(blur, m),
    hyperfocal: hyperfocal(blur, rig.focalLength),
    airy: airyShare(blur),
    step: stepAtTarget(blur, rig.worth, m),
    allowedTilt: allowedTilt(blur, rig.worth, rig.area, m),
    target: measureTarget({ magnification: m, pitch: rig.pitch, area: rig.area, sensor: rig.sensor }),
  });
}
