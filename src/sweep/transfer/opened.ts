// From a sweep whose band no correction reaches whole to the plan of a width transfer.
import type { Care } from '../care.ts';
import type { Outcome } from '../end/outcome.ts';
import type { Hold } from '../hold.ts';
import type { Plan } from '../plan.ts';
import type { Steps } from '../../units.ts';
import type { TransferPlan } from './joint.ts';

/** What is carried over from the sweep that opens a transfer. */
interface Opening {
  readonly id: string;
  readonly plan: Plan;
  readonly holds: readonly Hold[];
  readonly dialled: Steps;
}

/** Null where there is nothing to carry over: the band is known, or it is as wide as the scale, or nothing held at all. */
export function transferPlan({ id, plan, holds, dialled }: Opening, outcome: Outcome): TransferPlan | null {
  const end = endOf(outcome);
  if (end === null || holds.length === 0 || plan.transfer) return null;
  const { bench: _, ...kept } = plan;
  return {
    ...kept,
    manner: { ...plan.manner, care: careFor(plan.manner.care) },
    memory: { centres: [], halfWidth: plan.memory.halfWidth },
    start: dialled,
    transfer: { of: id, ...end, holds: holds.map(({ value, verdict }) => ({ value, verdict })) },
  };
}

function endOf(outcome: Outcome): Pick<TransferPlan['transfer'], 'side' | 'visible'> | null {
  if (outcome.found === 'beyond the scale') return { side: outcome.side === 'above' ? 'high' : 'low', visible: null };
  if (outcome.found !== 'past the limit' || outcome.side === 'both') return null;
  return { side: outcome.side, visible: outcome.visible };
}

/** The width is wanted here, so both ends must be seen. */
const careFor = (care: Care): Care => (care === 'quick' ? 'standard' : care);
