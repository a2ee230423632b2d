// The steps around the camera: tripod, target, distance, light, squareness.
import { AT_FIRST, AT_THE_TRIPOD, lampCautions, SQUARING, WITH_A_HEAVY_LENS } from './caution.ts';
import type { StepRule } from './step.ts';

export const RIG_STEPS: readonly StepRule[] = [
  { said: () => ({ id: 'old value' }), cautions: () => AT_FIRST, reads: () => 'old value' },
  { said: () => ({ id: 'tripod' }), cautions: ({ lens }) => (lens.heavy ? WITH_A_HEAVY_LENS : AT_THE_TRIPOD) },
  { when: ({ converter }) => converter !== null, said: ({ converter }) => ({ id: 'converter', factor: converter ?? 1 }) },
  { when: ({ lens }) => lens.zoom, said: ({ focalLength }) => ({ id: 'zoom', focalLength }) },
  { longOnly: true, said: () => ({ id: 'target' }) },
  { longOnly: true, said: () => ({ id: 'print' }), reads: () => 'print' },
  { said: ({ distance, measuredFrom, unit }) => ({ id: 'distance', distance, from: measuredFrom, unit }), reads: () => 'distance' },
  { said: () => ({ id: 'light' }), cautions: ({ lighting, mains }) => lampCautions(lighting, mains), reads: () => 'light' },
  { said: ({ squareBy }) => ({ id: 'square', by: squareBy }), cautions: ({ squareBy }) => SQUARING[squareBy], reads: ({ squareBy }) => squareBy },
];
