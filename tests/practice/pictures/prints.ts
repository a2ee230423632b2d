// The prints and the rig of the tests that keep the numbers of the practice picture.
import { disc, leaningSquare, rectangle, text, type Drawing, type Shape } from '../../../src/optics/print/drawing.ts';
import { mountRamp, mountTarget } from '../../../src/practice/pictures/mounted.ts';
import { SQUARE, type LensInUse, type Shot } from '../../../src/practice/pictures/shot.ts';
import { millimetres as mm } from '../../../src/units.ts';

export const LENS: LensInUse = { focalLength: 100, aperture: 2, distance: 1100, focusError: 0, aberration: 0 };
export const SHOT: Shot = {
  pose: SQUARE,
  lens: LENS,
  sensor: { width: 56, height: 44, pitch: 0.02, fullWell: 1e12, readNoise: 0 },
  development: { exposure: 0.8, sharpening: 0 },
  motion: { x: 0, y: 0 },
};
export const POSE = { lean: 12, swing: -17, roll: 9, right: 0.7, down: -0.4 };
export const drawing = (width: number, height: number, ...shapes: readonly Shape[]): Drawing => ({ width: mm(width), height: mm(height), shapes });
export const TARGET = drawing(
  6,
  3,
  rectangle(0.53, 0.51, 1.02, 1.9),
  rectangle(1.55, 0.51, 0.9, 1.9),
  disc({ x: 1.6, y: 1.4 }, 0.55),
  leaningSquare({ x: 4, y: 1.5 }, 2, 9),
  text(2.6, 2.8, 0.9, 'Ab 7', 'middle'),
  rectangle(3.7, 1.2, 0.5, 0.5, 'white'),
);
export const RAMP = drawing(5, 6, rectangle(0.4, 2.9, 4, 0.2), rectangle(1, 0.5, 0.3, 5), text(1.6, 2.4, 0.8, '−3 x'));
export const target = mountTarget(TARGET);
export const ramp = mountRamp(RAMP, 3, TARGET);
