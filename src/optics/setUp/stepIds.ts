// The steps of the set-up walk by name. A tick is stored under its name: never change an old one.

/** In the order they are walked. */
export const STEP_IDS = [
  'practice',
  'old value',
  'tripod',
  'converter',
  'zoom',
  'target',
  'print',
  'distance',
  'light',
  'square',
  'stabiliser',
  'centre point',
  'aperture',
  'focus button',
  'temperature',
  'start value',
  'critical focus',
  'magnification',
  'hold focus',
  'viewfinder',
] as const;
export type StepId = (typeof STEP_IDS)[number];
