// What a width transfer may give, for the tests of its words and its screens. Invented.
import type { CarriedOutcome } from '../src/sweep/end/outcome.ts';
import { seconds, steps } from '../src/units.ts';

export const CARRIED: CarriedOutcome = {
  found: 'carried over',
  side: 'high',
  visible: steps(13),
  aside: { low: steps(-5), high: steps(5) },
  halfWidth: 5.5,
  halfInterval: { from: 5, to: 6.5 },
  centre: 18,
  interval: { from: 17.25, to: 19.25 },
  chosen: steps(18),
  within: 0.87,
  inside: true,
  service: false,
  ends: 'seen',
  tally: { holds: 9, seconds: seconds(103) },
};
