// The steps on the camera: what it is set to, critical focus, and keeping it.
import { writeSteps } from '../../sweep/scale.ts';
import { writeNumber } from '../quantity.ts';
import type { SetUpCase, StepRule } from './step.ts';

export const CAMERA_STEPS: readonly StepRule[] = [
  {
    id: 'stabiliser',
    when: ({ body, lens }) => body.stabiliser || lens.stabiliser,
    say: () => 'Stabiliser off.',
    show: (given) => `Switch the stabiliser off ${stabilised(given)}: it moves the picture on a tripod.`,
  },
  {
    id: 'centre point',
    say: () => 'Centre point, single-shot autofocus.',
    show: () =>
      'Choose the centre autofocus point alone and single-shot autofocus, and lay the point on the centre mark.',
  },
  {
    id: 'aperture',
    say: ({ aperture }) => `Widest aperture, f ${writeNumber(aperture, 1)}.`,
    show: ({ aperture }) =>
      `Set aperture priority or manual exposure and the widest aperture, f/${writeNumber(aperture, 1)}.`,
  },
  {
    id: 'focus button',
    when: ({ body }) => body.rearButton,
    say: () => 'Use your focus button for the holds.',
    show: () =>
      'This body focuses from a rear button: hold that button, not the half-press, whenever the panel says press.',
  },
  {
    id: 'temperature',
    longOnly: true,
    say: () => 'Let the kit settle to the room.',
    show: () =>
      'Let camera and lens lie in the room until they are as warm as it is, half an hour or more after coming in;' +
      ' enter the temperature if you know it.',
    reads: () => 'temperature',
  },
  {
    id: 'start value',
    say: ({ start }) => `Correction on for this lens, set to ${spoken(start)}.`,
    show: ({ start }) => `Switch correction on for this lens alone, and set it to ${writeSteps(start)}.`,
  },
  {
    id: 'critical focus',
    say: ({ body }) =>
      body.liveView ? 'Focus in live view at full magnification.' : 'Find the sharpest focus on photographs.',
    show: ({ body }) =>
      body.liveView
        ? 'In live view at full magnification and the widest aperture, turn the ring past the sharpest point and ' +
          'back until it is found again: three times to the same place is critical focus.'
        : 'Photograph the target with the ring moved a hair each time, compare at full size, and go back to the ' +
          'sharpest: twice to the same place is critical focus.',
  },
  {
    id: 'magnification',
    longOnly: true,
    say: () => 'Photograph the scale and count its pixels.',
    show: () =>
      'Photograph the target, count the pixels that its scale spans at full size, and enter them: they tell the ' +
      'true magnification.',
    reads: () => 'magnification',
  },
  {
    id: 'hold focus',
    say: ({ body }) =>
      body.manualAtBody
        ? 'Focus to manual at the body; hands off the ring.'
        : 'Focus to manual at the lens; hands off the ring.',
    show: ({ body }) =>
      body.manualAtBody
        ? 'Set focus to manual at the body, so that the lens is not touched, and leave the ring alone from now on.'
        : 'Set the lens\u2019s switch to manual without turning the ring, fix the ring with a strip of tape that ' +
          'peels off cleanly, and check the focus again.',
    reads: () => 'live view',
  },
  {
    id: 'viewfinder',
    say: ({ body }) => (body.liveView ? 'Leave live view, eye to the viewfinder.' : 'Eye to the viewfinder.'),
    show: ({ body }) =>
      `${body.liveView ? 'Leave live view and look' : 'Look'} through the viewfinder: the focus light must be clear ` +
      'to your eye; set the eyepiece if it is not.',
  },
];

function stabilised({ body, lens }: SetUpCase): string {
  if (body.stabiliser && lens.stabiliser) return 'in the lens and in the body';
  return lens.stabiliser ? 'at the lens' : 'in the body';
}

/** A correction as it is said. */
const spoken = (value: number): string => (value === 0 ? 'zero' : `${value > 0 ? 'plus' : 'minus'} ${Math.abs(value)}`);
