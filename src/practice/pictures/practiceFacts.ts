// What is known of the practice camera and its rig, as a camera writes it into its pictures and a person into the kit.
import { fNumber, magnification } from '../../optics/quantity.ts';
import type { Sensor } from '../../optics/sensor.ts';
import { millimetres } from '../../units.ts';

const SENSOR: Sensor = { width: millimetres(26), height: millimetres(16) };

export const PRACTICE_FACTS = { focalLength: millimetres(85), aperture: fNumber(1.8), sensor: SENSOR };

/** From the lens to the target. */
export const PRACTICE_DISTANCE = millimetres(2000);
/** Thin lens: m = f/(s - f), s from the lens. */
export const PRACTICE_MAGNIFICATION = magnification(PRACTICE_FACTS.focalLength / (PRACTICE_DISTANCE - PRACTICE_FACTS.focalLength));
