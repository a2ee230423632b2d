// A whole picture of the rig, target and ramp, as the tests' own camera takes it, held upright so that both are in it.
import type { TakenPicture } from '../../src/practice/pictures/takenPicture.ts';
import { photograph } from './camera/photograph.ts';
import { rigFor } from './camera/rig.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';

/** Of the pictures below, in millimetres: the longer side of the sensor is the picture's height. */
export const RIG_SENSOR = { width: 26, height: 16 };
const SENSOR = { ...USUAL_SHOT.sensor, width: 1600, height: 2600, pitch: 0.01 };

/** With 85 mm at f/1.8, two metres away, focused so many millimetres behind the target. */
export function rigPicture(focusError: number, prints: 'both' | 'target' | 'none' = 'both'): TakenPicture {
  const shot = { ...USUAL_SHOT, sensor: SENSOR, lens: { ...USUAL_SHOT.lens, focusError } };
  const { sheets } = rigFor(shot, 2);
  return photograph(sheets.slice(0, { both: 2, target: 1, none: 0 }[prints]), shot, 3);
}
