// English: what does not fit a field of the kit, in a form or in a file.
import type { FieldFault } from '../../kit/fault.ts';
import { byUnit } from '../countryInUse.ts';

export const FIELD_FAULT: Readonly<Record<FieldFault, string>> = {
  'no name': 'Give it a name you will recognise.',
  'name too long': 'Use a name of at most 60 characters.',
  'engraving empty': 'Leave it empty, or copy it from the camera or lens.',
  'engraving too long': 'Use at most 60 characters.',
  'note too long': 'Use at most 2000 characters.',
  'no focal length': 'Enter the focal length in millimetres, from 4 to 2000.',
  get 'no distance'() {
    return byUnit({ m: 'Enter the distance in metres, from 0.05 to 500.', ft: 'Enter the distance in feet, from 0.17 to 1640.' });
  },
  'no sensor size': 'Enter the width and height of the sensor in millimetres.',
  'sensor too small': 'A sensor is at least 4\u00a0mm wide and high.',
  'sensor too large': 'A sensor is at most 70\u00a0mm wide and high.',
  'remembers no number': 'Enter how many lenses it remembers, as a whole number.',
  'remembers too few': 'Enter at least 1 lens.',
  'remembers too many': 'Enter at most 1000 lenses.',
  'no aperture': 'Enter the aperture as an f-number, such as 1.8.',
  'aperture too wide': 'The widest aperture is at least f/0.5.',
  'aperture too narrow': 'The widest aperture is at most f/64.',
  'focal lengths turned round': 'Enter the shorter focal length first.',
  'no factor': 'Enter the factor, such as 1.4.',
  'factor too small': 'The factor is at least 0.5.',
  'factor too large': 'The factor is at most 4.',
  'no lowest correction': 'Enter the lowest correction as a whole number, such as \u221220.',
  'no highest correction': 'Enter the highest correction as a whole number, such as 20.',
  'no step': 'Enter how many corrections one click moves, as a whole number from 1.',
  'scale too short': 'The range must have at least three corrections.',
  'step does not divide': 'The step must divide the range evenly.',
  'arrows not chosen': 'Choose what this body shows beside its focus light.',
  'does not fit': 'This does not fit. Check what you entered.',
};
