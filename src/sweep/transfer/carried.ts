// What comes out of a width transfer: the centre of the true band is its visible end, and half the width measured with the
// focus set aside inwards from it (common practice, no source), with the interval of the joint posterior. Where the
// width was not measured either, no more is known than before.
import { centreInterval, centreOf, chanceThat, intervalOf, type Belief } from '../belief/belief.ts';
import { momentsOf } from '../belief/grid.ts';
import { withinOneStep } from '../end/confidence.ts';
import { endsOf, isSeen, type HeldValue } from '../end/ends.ts';
import { nearestMiddle, roundToHalf, type CarriedOutcome, type Outcome, type Tally } from '../end/outcome.ts';
import { read } from '../verdict.ts';
import { carriedBelief, type TransferPlan } from './joint.ts';

export function carriedOver(plan: TransferPlan, aside: Belief, held: readonly HeldValue[], tally: Tally): Outcome {
  const ends = endsOf(aside, held);
  const lit = held.some(({ counts }) => counts === 'in');
  const belief = carriedBelief(plan, aside);
  const stated = carriedBelief(plan, aside, true);
  if (!ends || !lit || ends.low.known === 'past' || ends.high.known === 'past') return asBefore(plan, belief, tally);
  const { scale, transfer } = plan;
  const seen = isSeen(ends.low) && isSeen(ends.high);
  const span = ends.high.last - ends.low.last;
  const inwards = transfer.side === 'high' ? 1 : -1;
  const centre = seen && transfer.visible !== null && sawVisibleEnd(plan) ? transfer.visible + (inwards * span) / 2 : roundToHalf(centreOf(belief).mean, scale);
  const { chosen } = nearestMiddle(belief, centre);
  const { low, high, halfWidth } = belief.model;
  const inside = chanceThat(belief, (h) => low[h]! <= chosen && chosen <= high[h]!) >= 0.5;
  const half = intervalOf(belief, halfWidth);
  return {
    found: 'carried over',
    side: transfer.side,
    visible: transfer.visible,
    aside: { low: ends.low.last, high: ends.high.last },
    halfWidth: seen ? (span + scale.step) / 2 : roundToHalf(momentsOf(belief.posterior, halfWidth).mean * scale.step, scale),
    halfInterval: { from: half.from * scale.step, to: half.to * scale.step },
    centre,
    interval: centreInterval(stated),
    chosen,
    within: withinOneStep(belief, chosen),
    inside,
    service: !inside || centre < scale.min || centre > scale.max,
    ends: seen ? 'seen' : 'believed',
    tally,
  } satisfies CarriedOutcome;
}

/** A first series that was ended early may only have believed in its visible end. */
function sawVisibleEnd({ transfer: { side, visible, holds }, scale, arrows }: TransferPlan): boolean {
  const next = (visible ?? 0) + (side === 'high' ? -scale.step : scale.step);
  const counted = holds.map(({ value, verdict }) => ({ value, counts: read(verdict, arrows).counts }));
  return counted.some(({ value, counts }) => value === visible && counts === 'in') && counted.some(({ value, counts }) => value === next && counts === 'out');
}

function asBefore({ transfer, scale }: TransferPlan, belief: Belief, tally: Tally): Outcome {
  const { side, visible } = transfer;
  if (visible === null) return { found: 'beyond the scale', side: side === 'high' ? 'above' : 'below', tally };
  const limit = side === 'high' ? scale.max : scale.min;
  return { found: 'past the limit', side, visible, bound: (visible + limit) / 2, interval: centreInterval(belief), tally };
}
