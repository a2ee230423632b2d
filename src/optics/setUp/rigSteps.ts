// The steps around the camera: tripod, target, distance, light, squareness.
import { writeDistance } from '../length.ts';
import { FROM_WORDS } from '../magnification.ts';
import { writeNumber } from '../quantity.ts';
import {
  HEAVY_LENS,
  LASER,
  LASER_SENSOR,
  LEADS,
  MANUAL,
  MIRROR,
  MIRROR_EDGES,
  SERVICE,
  TRIPOD,
  lampCautions,
} from './caution.ts';
import type { SetUpCase, StepRule } from './step.ts';

const SQUARE = {
  mirror: {
    say: 'Square the target with the mirror.',
    show:
      'Lay a small mirror flat on the target\u2019s centre and turn the target until the lens sees itself in the ' +
      'middle of live view; enter how far off it stays.',
    cautions: [MIRROR, MIRROR_EDGES],
  },
  sides: {
    say: 'Square the target by its four sides.',
    show:
      'Measure the four sides between the corner marks in live view, enter them, and turn the target as the panel ' +
      'says.',
    cautions: [],
  },
  spot: {
    say: 'Square the target with the returning spot.',
    show:
      'With an eye away from the viewfinder, send the spot from beside the lens to the mirror and turn the target ' +
      'until it comes back to its source; enter how far off it stays.',
    cautions: [LASER, LASER_SENSOR, MIRROR, MIRROR_EDGES],
  },
} as const;

const where = ({ distance, unit, measuredFrom }: SetUpCase): string =>
  `${writeDistance(distance, unit)} from the ` +
  `${measuredFrom === 'film plane' ? 'film-plane mark on the body' : 'front of the lens'}`;

export const RIG_STEPS: readonly StepRule[] = [
  {
    id: 'old value',
    say: () => 'Note the correction stored now.',
    show: () =>
      'Read the correction that the camera stores for this pairing now and enter it, so that you can always go back.',
    cautions: () => [MANUAL, SERVICE],
    reads: () => 'old value',
  },
  {
    id: 'tripod',
    say: () => 'Camera on a firm tripod, release by remote.',
    show: () =>
      'Put the camera on a firm tripod, lock every clamp, and use a remote release for photographs and, if it has' +
      ' a half-press, for the holds.',
    cautions: ({ lens }) => (lens.heavy ? [HEAVY_LENS, TRIPOD, LEADS] : [TRIPOD, LEADS]),
  },
  {
    id: 'converter',
    when: ({ converter }) => converter !== null,
    say: ({ converter }) => `Fit the converter, ${converter}.`,
    show: ({ converter }) => `Fit ${converter} between body and lens: its value holds for this converter only.`,
  },
  {
    id: 'zoom',
    when: ({ lens }) => lens.zoom,
    say: ({ focalLength }) => `Zoom to ${writeNumber(focalLength, 0)} millimetres.`,
    show: ({ focalLength }) => `Set the zoom ring to ${writeNumber(focalLength, 0)} mm and leave it there.`,
  },
  {
    id: 'target',
    longOnly: true,
    say: () => 'Hang the target flat, its centre at lens height.',
    show: () =>
      'Fix the target flat on a firm, upright board or wall, its centre mark as high as the middle of the lens.',
  },
  {
    id: 'print',
    longOnly: true,
    say: () => 'Measure the printed scale.',
    show: () => 'Measure the printed scale between the outer edges of its end marks, and enter the length.',
    reads: () => 'print',
  },
  {
    id: 'distance',
    say: (given) => `Target at ${writeDistance(given.distance, given.unit)} from the ${FROM_WORDS[given.measuredFrom]}.`,
    show: (given) => `Put the target ${where(given)}, and enter the distance you measured.`,
    reads: () => 'distance',
  },
  {
    id: 'light',
    say: () => 'Light the target evenly, and read the exposure.',
    show: () =>
      'Light the target evenly from both sides without glare, and enter the ISO, aperture and shutter that the ' +
      'camera shows for it.',
    cautions: ({ lighting, mains }) => lampCautions(lighting, mains),
    reads: () => 'light',
  },
  {
    id: 'square',
    say: ({ squareBy }) => SQUARE[squareBy].say,
    show: ({ squareBy }) => SQUARE[squareBy].show,
    cautions: ({ squareBy }) => SQUARE[squareBy].cautions,
    reads: ({ squareBy }) => squareBy,
  },
];
