// The rig that the tests of the sketch draw, unless they say otherwise.
import { degrees, fNumber } from '../../../src/optics/quantity.ts';
import { lensSizes, type AtTarget, type RigSizes } from '../../../src/optics/sketch/rigSizes.ts';
import { millimetres as mm } from '../../../src/units.ts';

export const TARGET: AtTarget = {
  width: mm(192),
  height: mm(250),
  field: mm(180),
  ramp: { above: 106, below: 90, width: 127, lean: degrees(45) },
  depth: { front: mm(119), behind: mm(126) },
  allowedTilt: degrees(7.1),
};
export const RIG: RigSizes = { distance: mm(4250), lens: lensSizes(mm(85), fNumber(1.8), null), lighting: 'daylight', target: TARGET };
