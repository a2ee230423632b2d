// What the strip draws of a sweep: under way, or as the logbook keeps it.
import { centreInterval, centreProfile } from '../../sweep/belief/belief.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Steps } from '../../units.ts';
import type { StripMatter } from './geometry.ts';

/** The holds of the current series, what they say of the centre, and the value in hand or the one that came out. */
export function stripMatter({ plan, holds, belief, phase }: SweepState): StripMatter {
  const outcome = 'outcome' in phase ? phase.outcome : null;
  return {
    scale: plan.scale,
    holds: holds.map(({ value, verdict, reading }) => ({ value, ...verdict, counts: reading.counts })),
    profile: centreProfile(belief),
    interval: centreInterval(belief),
    current: outcome ? chosenOf(outcome) : 'next' in phase ? phase.next.value : null,
    band: outcome?.found === 'band' ? { low: outcome.low, high: outcome.high } : null,
  };
}

const chosenOf = (outcome: Outcome): Steps | null => (outcome.found === 'band' ? outcome.chosen : null);
