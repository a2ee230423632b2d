// English: what does not fit at the bench, and what to do about it.
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { byUnit } from '../countryInUse.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

const PLAIN: Readonly<Record<PlainFault, string>> = {
  'no aperture': 'Enter the aperture as the lens or the camera shows it, such as 2.8. It lies between 0.7 and 128.',
  'no factor': 'Enter the factor engraved on the converter, from 1 to 3, such as 1.4.',
  'no focal length': 'Enter the focal length in millimetres, from 4 to 2000.',
  'focal length unread': 'Enter the focal length in millimetres, such as 85.',
  get 'no distance'() {
    return byUnit({ m: 'Enter the distance in metres, from 0.05 to 500.', ft: 'Enter the distance in feet, from 0.17 to 1640.' });
  },
  'no measured distance': 'Enter the distance you measured.',
  'no reach': 'Enter how far the front of the lens is from the film-plane mark in millimetres, from 1 to 1000.',
  'no magnification': 'Enter the magnification as size on the sensor over size of the target, from 0.0002 to 10. Life size is 1.',
  'no length on the target': 'Enter the length on the target in millimetres, such as the 100\u00a0mm of its scale.',
  'no pixels': 'Count the pixels that the length spans in the full-size photograph. There must be at least 10.',
  'no pixels spanned': 'Enter how many pixels of a full-size photograph the scale spans.',
  'no pixel pitch': 'Enter the pixel pitch in micrometres, from 0.5 to 50.',
  'no width of a photograph': 'Enter the width of a full-size photograph in pixels, such as 6000.',
  'no sensor width': 'Enter the width of the sensor in millimetres, from 4 to 100.',
  'no sensor height': 'Enter the height of the sensor in millimetres, from 3 to 100.',
  'no circle of confusion': 'Enter the circle of confusion in millimetres, from 0.001 to 0.2. Usual is 0.03.',
  'no area': 'Enter the size of the AF area on the sensor in millimetres, from 0.2 to 30. Usual is 2.5.',
  'no step worth': 'Enter what one step is worth as a share of half the depth of focus, from 0.01 to 1. Usual is 0.125.',
  'no exposure': 'Enter the ISO, aperture and shutter that the camera shows for the target.',
  'no iso speed': 'Enter the ISO speed as the camera shows it, such as 400.',
  'no shutter': 'Enter the shutter as 1/125 for a fraction of a second, or as 2" for whole seconds.',
  'no light value': 'Read ISO, aperture and shutter from the camera again. No room is that bright or dark.',
  'plenty below fine': 'Set “plenty” higher than “enough”.',
  'no angle': 'Enter the angle in degrees, from \u221290 to 90.',
  'no reflection': 'Enter how many pixels of a full-size photograph the reflection is off the middle.',
  'no offset on the sensor': 'Enter the offset on the sensor in millimetres.',
  'offset beyond the picture': 'That offset is larger than any picture. Measure it again from the middle of the picture.',
  'no spot': 'Enter how far from its source the spot comes back, in millimetres, or 0 if it meets its source.',
  'no sides': 'Enter the lengths of all four sides in live view, each above zero.',
  'no rectangle': 'Enter the width and height of the rectangle in millimetres.',
  'rectangle of nothing': 'Enter the width and height of the rectangle in millimetres, each above zero.',
  'tilt without a rig': 'Enter the widest aperture and what else is marked on the bench. The tilt follows from them.',
  'target too large': 'The target would be larger than a wall. Move it nearer, or set a smaller AF area.',
  'no drawn length': 'The drawn length of the scale is missing.',
  'no printed length': 'Enter the length of the printed scale in millimetres, such as 100.',
  'no ramp line': 'Enter the number beside the sharpest line, with its sign.',
  'no ramp length': 'Enter the length of the ramp in millimetres.',
  'no set-back': 'Enter how far the upper end of the ramp stands behind its lower end, in millimetres.',
  'set-back too large': 'Enter how far the upper end of the ramp stands behind its lower end. It is more than 0 and less than the length of the ramp.',
  'lean too steep or flat': 'Set the ramp to lean between 10° and 80°. It is drawn for 45°.',
  'no share': 'Enter the share of the depth of field in front of the subject, from 0 to 100%.',
  'depth without end': 'The depth of field has no far end here, so there is no share in front. Open the aperture or move nearer.',
  'share beyond the range': 'The range of corrections ends before that share is reached. Choose a share nearer to the middle.',
  'share without a rig': 'You asked for a share of the depth in front. Enter the widest aperture at the bench to see the value that gives it.',
  'no stored correction': 'Enter the correction that is stored now, such as \u22123.',
  'no such correction': 'Enter the correction as a whole number, such as \u22123.',
  'no temperature': 'Enter the temperature in degrees Celsius, from \u221250 to 60.',
  'does not fit': 'This does not fit. Check what you entered.',
};

export function benchFault(fault: BenchFault): string {
  switch (fault.is) {
    case 'distance unread':
      return fault.unit === 'm' ? 'Enter the distance in metres, such as 1.75.' : 'Enter the distance in feet, such as 5.74.';
    case 'distance out of range':
      return fault.unit === 'm' ? 'Enter the distance in metres, from 0.05 to 500.' : 'Enter the distance in feet, from 0.17 to 1640.';
    case 'two lengths':
      return `“${fault.text}” can mean two lengths. Write ${write.choice([write.typedLength(fault.one), write.typedLength(fault.other)])}.`;
    case 'two numbers':
      return `“${fault.text}” can mean two numbers. Write ${write.choice([write.typed(fault.one), write.typed(fault.other)])}.`;
    case 'focal length in another unit':
      return `Enter the focal length in millimetres. ${write.typedLength(fault.typed)} is ${write.number(fault.meant, 1)}.`;
    case 'focal length in metres':
      return `${write.number(fault.typed, 3)} looks like metres. Enter the focal length in millimetres, here ${write.number(fault.meant)}.`;
    case 'nearer than its closest focus':
      return `${write.distance(fault.wanted, fault.unit)} is nearer than this lens can focus. Put the target at ${write.distance(fault.closest, fault.unit)} or farther, measured from the film-plane mark.`;
    case 'no focus so near':
      return `A plain ${write.number(fault.focalLength)}\u00a0mm lens cannot focus at ${write.distance(fault.distance, 'm')} from ${FROM[fault.from]}. Measure the distance again, or measure the magnification on the scale of the target.`;
    case 'tilt too large':
      return `That would be a tilt of more than ${write.number(fault.most)}°. Measure the sides again, and check the size and distance of the target.`;
    case 'print misread':
      return `Measure the scale again, in millimetres, between the outer edges of its end marks. It should be about ${write.number(fault.drawn)}.`;
    default:
      return PLAIN[fault.is];
  }
}
