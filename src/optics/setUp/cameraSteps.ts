// The steps on the camera: what it is set to, critical focus, and keeping it.
import type { StepRule } from './step.ts';

export const CAMERA_STEPS: readonly StepRule[] = [
  {
    when: ({ body, lens }) => body.stabiliser || lens.stabiliser,
    said: ({ body, lens }) => ({ id: 'stabiliser', at: body.stabiliser && lens.stabiliser ? 'both' : lens.stabiliser ? 'lens' : 'body' }),
  },
  { said: () => ({ id: 'centre point' }) },
  { said: ({ aperture }) => ({ id: 'aperture', aperture }) },
  { when: ({ body }) => body.rearButton, said: () => ({ id: 'focus button' }) },
  { longOnly: true, said: () => ({ id: 'temperature' }), reads: () => 'temperature' },
  { said: ({ start }) => ({ id: 'start value', start }) },
  { said: ({ body }) => ({ id: 'critical focus', by: body.liveView ? 'live view' : 'photographs' }) },
  { longOnly: true, said: () => ({ id: 'magnification' }), reads: () => 'magnification' },
  { said: ({ body }) => ({ id: 'hold focus', at: body.manualAtBody ? 'body' : 'lens' }), reads: () => 'live view' },
  { said: ({ body }) => ({ id: 'viewfinder', leaves: body.liveView ? 'live view' : 'nothing' }) },
];
