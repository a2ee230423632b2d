// The rig as a photographer sets it up: the prints drawn for one lens at one distance, and a shot of both.
import { millimetres } from '../../../src/units.ts';
import { depthOfField, type DepthOfField } from '../../../src/optics/depthOfField.ts';
import { fNumber, magnification } from '../../../src/optics/quantity.ts';
import { measureTarget } from '../../../src/optics/print/measure.ts';
import { drawRamp, type Ramp } from '../../../src/optics/print/ramp.ts';
import { drawTarget, type Target } from '../../../src/optics/print/target.ts';
import { mountRamp, mountTarget, type Mounted } from '../../../src/practice/pictures/mounted.ts';
import type { Shot } from '../../../src/practice/pictures/shot.ts';

export interface Rig {
  readonly target: Target;
  readonly ramp: Ramp;
  readonly sheets: readonly [Mounted, Mounted];
  readonly depth: DepthOfField;
}

/** The circle of confusion that is reckoned with. */
const CONFUSION = millimetres(0.03);
const FULL = { width: millimetres(36), height: millimetres(24) };

/** Prints for this lens at this distance, and an AF area of so many millimetres on the sensor. */
export function rigFor({ lens, sensor }: Pick<Shot, 'lens' | 'sensor'>, area: number): Rig {
  const m = magnification(lens.focalLength / (lens.distance - lens.focalLength));
  const depth = depthOfField({ aperture: fNumber(lens.aperture), confusion: CONFUSION }, m, millimetres(lens.focalLength));
  const measure = measureTarget({ magnification: m, pitch: millimetres(sensor.pitch), area: millimetres(area), sensor: FULL });
  if (!measure.ok) throw new Error(`No target for this rig: ${measure.fault.is}`);
  const target = drawTarget(measure.value, { words: ['A body with a lens', 'Date and place'], scale: '100 mm' });
  const ramp = drawRamp(depth.total, { words: ['Read the sharpest line'], depth: String });
  return { target, ramp, sheets: [mountTarget(target.drawing), mountRamp(ramp.drawing, ramp.layout.zero, target.drawing)], depth };
}
