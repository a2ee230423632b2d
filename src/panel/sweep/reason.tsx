// Why this value, or what the offer means.
import { findingOf } from '../../sweep/finding.ts';
import type { SweepState } from '../../sweep/state.ts';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { hasLiveView } from '../../sweep/turn.ts';
import { words } from '../../words/catalogue.ts';

export function ReasonLine({ sweep: { phase, plan, troubles } }: { readonly sweep: SweepState }) {
  switch (phase.name) {
    case 'checking':
    case 'turning':
    case 'finished':
      return null;
    case 'offered': {
      const say = words('sweep').offer;
      const finding = findingOf(phase.outcome, troubles);
      if (finding.is === 'sure') return <p class="reason">{say.enough(plan.manner.care, hasLiveView(plan))}</p>;
      if (finding.is !== 'doubtful') return <p class="reason">{say.asItStands}</p>;
      return <p class="reason">{isHopeless(finding.trouble) ? say.noMoreHolds : say.firstThis}</p>;
    }
    default:
      return <p class="reason">{words('spoken').reason(phase.next)}</p>;
  }
}
