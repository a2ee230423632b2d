// A shot as most are taken on the bench, to change one thing of.
import type { KeptShot } from './photograph.ts';
import { SQUARE } from '../../../src/practice/pictures/shot.ts';

export const USUAL_SHOT: KeptShot = {
  pose: SQUARE,
  lens: { focalLength: 85, aperture: 1.8, distance: 2000, focusError: 0, aberration: 0.5 },
  sensor: { width: 1500, height: 1500, pitch: 0.006, fullWell: 40_000, readNoise: 4 },
  development: { exposure: 0.85, sharpening: 0, jpeg: 95 },
  motion: { x: 0, y: 0 },
};
