// One picture of the practice camera: its printed target and ramp, drawn for this rig as the bench draws them, and taken with the
// focus error of that turn. Held upright, so that both are in it; few pixels, so that it is soon there.
import { depthOfField } from '../../optics/depthOfField.ts';
import { measureTarget } from '../../optics/print/measure.ts';
import { drawRamp } from '../../optics/print/ramp.ts';
import { drawTarget, UNLABELLED } from '../../optics/print/target.ts';
import { confusion } from '../../optics/sensor.ts';
import { got, type Result } from '../../result.ts';
import type { BenchFault } from '../../optics/fault.ts';
import { millimetres } from '../../units.ts';
import { seededRandom } from '../random.ts';
import { mountRamp, mountTarget, type Mounted } from './mounted.ts';
import { focusErrorIn, type PicturedCamera, type PracticeTurn } from './picturedCamera.ts';
import { PRACTICE_DISTANCE, PRACTICE_FACTS, PRACTICE_MAGNIFICATION } from './practiceFacts.ts';
import type { Sensel, Shot } from './shot.ts';
import { SQUARE } from './shot.ts';
import { takePicture, type TakenPicture } from './takenPicture.ts';

const { focalLength, aperture, sensor } = PRACTICE_FACTS;
/** Millimetres from pixel to pixel. */
const PITCH = 0.0125;
/** Side of the AF area on the sensor, in millimetres. */
const AREA = 2;
const SENSEL: Sensel = { width: sensor.height / PITCH, height: sensor.width / PITCH, pitch: PITCH, fullWell: 40_000, readNoise: 4 };

/** The prints, each where it stands. */
export function practicePrints(): Result<readonly [Mounted, Mounted], BenchFault> {
  const measure = measureTarget({ magnification: PRACTICE_MAGNIFICATION, pitch: millimetres(PITCH), area: millimetres(AREA), sensor });
  if (!measure.ok) return measure;
  const target = drawTarget(measure.value, UNLABELLED);
  const depth = depthOfField({ aperture, confusion: confusion(sensor, { by: 'diagonal' }) }, PRACTICE_MAGNIFICATION, focalLength);
  const ramp = drawRamp(depth.total, { words: [], depth: String });
  return got([mountTarget(target.drawing), mountRamp(ramp.drawing, ramp.layout.zero, target.drawing)]);
}

/** `seed`: of this picture alone; the same one gives the same picture. */
export function practicePicture(prints: readonly Mounted[], camera: PicturedCamera, turn: PracticeTurn, seed: number): TakenPicture {
  const focusError = focusErrorIn(camera, turn, seededRandom(seed));
  const shot: Shot = {
    pose: SQUARE,
    lens: { focalLength, aperture, distance: PRACTICE_DISTANCE, focusError, aberration: 0.5 },
    sensor: SENSEL,
    development: { exposure: 0.85, sharpening: 0 },
    motion: { x: 0, y: 0 },
  };
  return takePicture(prints, shot, seed + 1);
}
