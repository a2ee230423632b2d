// What the strip draws of a sweep: under way, or as the logbook keeps it.
import { useMemo } from 'preact/hooks';
import { centreInterval, centreProfile } from '../../sweep/belief/belief.ts';
import { standing } from '../../sweep/toEnter.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Phase, SweepState } from '../../sweep/state.ts';
import type { StripMatter } from './geometry.ts';

/**
 * The holds of the current series, what they say of the centre, and the value in hand or the one that came out. The
 * belief is only read again when it has changed, so that beginning a hold costs nothing.
 */
export function useStripMatter({ plan, holds, belief, phase, troubles }: SweepState): StripMatter {
  const believed = useMemo(() => ({ profile: centreProfile(belief), interval: centreInterval(belief) }), [belief]);
  return useMemo(
    () => ({
      ...believed,
      scale: plan.scale,
      holds: holds.map(({ value, verdict, reading }) => ({ value, ...verdict, counts: reading.counts })),
      ...inHand(phase, troubles),
    }),
    [believed, plan, holds, phase, troubles],
  );
}

/** Where a trouble stands no value came out that could be pointed at. */
function inHand(phase: Phase, troubles: SweepState['troubles']): Pick<StripMatter, 'current' | 'band'> {
  if ('outcome' in phase) return standing(troubles).length > 0 ? { current: null, band: null } : cameOut(phase.outcome);
  return { current: phase.next.value, band: null };
}

function cameOut(outcome: Outcome): Pick<StripMatter, 'current' | 'band'> {
  if (outcome.found === 'band') return { current: outcome.chosen, band: { low: outcome.low, high: outcome.high } };
  return { current: null, band: outcome.found === 'carried over' ? outcome.aside : null };
}
