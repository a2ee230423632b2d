// Cases of the set-up walk: a plain one, and any.
import fc from 'fast-check';
import { fNumber } from '../../src/optics/quantity.ts';
import type { SetUpCase } from '../../src/optics/setUp/step.ts';
import { millimetres as mm, steps } from '../../src/units.ts';

export const plain: SetUpCase = {
  practice: false,
  version: 'long',
  body: { stabiliser: false, liveView: true, rearButton: false, manualAtBody: true },
  lens: { stabiliser: false, zoom: false, heavy: false },
  converter: null,
  focalLength: mm(85),
  aperture: fNumber(1.8),
  distance: mm(4250),
  measuredFrom: 'film plane',
  unit: 'm',
  lighting: 'daylight',
  mains: 50,
  squareBy: 'mirror',
  start: steps(0),
};
export const anyCase: fc.Arbitrary<SetUpCase> = fc.record({
  practice: fc.boolean(),
  version: fc.constantFrom('long', 'short'),
  body: fc.record({
    stabiliser: fc.boolean(),
    liveView: fc.boolean(),
    rearButton: fc.boolean(),
    manualAtBody: fc.boolean(),
  }),
  lens: fc.record({ stabiliser: fc.boolean(), zoom: fc.boolean(), heavy: fc.boolean() }),
  converter: fc.constantFrom(null, 1.4),
  focalLength: fc.constantFrom(mm(35), mm(400)),
  aperture: fc.constantFrom(fNumber(1.4), fNumber(5.6)),
  distance: fc.constantFrom(mm(1750), mm(20_000)),
  measuredFrom: fc.constantFrom('film plane', 'front of lens'),
  unit: fc.constantFrom('m', 'ft'),
  lighting: fc.constantFrom('daylight', 'steady lamp', 'mains lamp', 'warm lamp'),
  mains: fc.constantFrom(50, 60),
  squareBy: fc.constantFrom('mirror', 'sides', 'spot'),
  start: fc.constantFrom(steps(0), steps(-7)),
});
