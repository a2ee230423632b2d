// A band that a sweep may find, for the tests of its words and its screens. Invented.
import type { BandOutcome } from '../src/sweep/end/outcome.ts';
import { seconds, steps } from '../src/units.ts';

export const BAND: BandOutcome = {
  found: 'band',
  low: steps(2),
  high: steps(9),
  centre: 5.5,
  chosen: steps(5),
  other: null,
  interval: { from: 4.75, to: 6.25 },
  within: 0.974,
  ends: 'seen',
  tally: { holds: 9, seconds: seconds(103) },
};
