// English: each step of the set-up walk as it is shown, in a few short sentences.
import { writeSteps } from '../../sweep/scale.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SHOWN: Each = {
  practice: () => 'With the practice camera there is nothing to set up. Watch the lamp on the screen as you would the focus light.',
  'old value': () => 'Enter the correction that the camera has stored for this body and lens. Then you can always go back.',
  tripod: () => 'Put the camera on a firm tripod and lock every clamp. Use a remote release for photographs and, if it has a half-press, for the holds.',
  converter: ({ factor }) => `Fit the ${write.number(factor, 2)}\u00d7 converter between body and lens. The value is right with this converter only.`,
  zoom: ({ focalLength }) => `Set the zoom ring to ${write.millimetres(focalLength)} and leave it there.`,
  target: () => 'Fix the target flat on a firm, upright board or wall. Its centre mark is as high as the middle of the lens.',
  print: () => 'Measure the printed scale between the outer edges of its end marks, and enter the length.',
  distance: ({ distance: length, from, unit }) =>
    `Put the target ${write.distance(length, unit)} from ${from === 'film plane' ? 'the film-plane mark on the body' : 'the front of the lens'}. Enter the distance you measured.`,
  light: () => 'Light the target evenly from both sides without glare. Enter the ISO, aperture and shutter that the camera shows for it.',
  square: ({ by }) =>
    ({
      mirror:
        'Lay a small mirror flat on the centre of the target. Turn the target until the lens sees itself in the middle of live view. Enter how far off it stays.',
      sides: 'Measure the four sides between the corner marks in live view, and enter them. Turn the target as the panel says.',
      spot: 'With no eye at the viewfinder, send the spot from beside the lens to the mirror. Turn the target until it comes back to its source. Enter how far off it stays.',
    })[by],
  stabiliser: ({ at }) =>
    ({
      both: 'Switch the stabiliser off in the lens and in the body. It moves the picture on a tripod.',
      lens: 'Switch the stabiliser off at the lens. It moves the picture on a tripod.',
      body: 'Switch the stabiliser off in the body. It moves the picture on a tripod.',
    })[at],
  'centre point': () => 'Choose the centre autofocus point alone and single-shot autofocus. Lay the point on the centre mark.',
  aperture: ({ aperture }) => `Set aperture priority or manual exposure, and the widest aperture, f/${write.number(aperture, 1)}.`,
  'focus button': () => 'This body focuses from a rear button. Hold that button, not the half-press, whenever the panel says press.',
  temperature: () => 'Leave camera and lens in the room for at least half an hour, until they reach its temperature. Enter it if you know it.',
  'start value': ({ start }) => `Switch correction on for this lens alone, and set it to ${writeSteps(start)}.`,
  'critical focus': ({ by }) =>
    by === 'live view'
      ? 'In live view at full magnification and the widest aperture, turn the ring past the sharpest point and back to it. Three times to the same place is critical focus.'
      : 'Photograph the target with the ring moved a hair each time. Compare at full size, and go back to the sharpest. Twice to the same place is critical focus.',
  magnification: () => 'Photograph the target. Count the pixels that its scale spans at full size, and enter them. They tell the true magnification.',
  'hold focus': ({ at }) =>
    at === 'body'
      ? 'Set focus to manual at the body, so that you do not touch the lens. Leave the ring alone from now on.'
      : 'Set the switch of the lens to manual without turning the ring. Fix the ring with tape that peels off cleanly, and check the focus again.',
  viewfinder: ({ leaves }) =>
    leaves === 'live view'
      ? 'Leave live view and look through the viewfinder. Set the eyepiece if the focus light is not clear to your eye.'
      : 'Look through the viewfinder. Set the eyepiece if the focus light is not clear to your eye.',
};
