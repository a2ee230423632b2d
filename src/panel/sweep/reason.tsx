// Why this value, or what the offer means.
import type { SweepState } from '../../sweep/state.ts';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { hasLiveView } from '../../sweep/turn.ts';
import { reasonInWords } from '../../voice/reasons.ts';

export function Reason({ sweep: { phase, plan, troubles } }: { readonly sweep: SweepState }) {
  switch (phase.name) {
    case 'checking':
    case 'turning':
    case 'finished':
      return null;
    case 'offered':
      if (troubles.some(isHopeless)) return <p class="reason">More holds would tell no more. Accept to see what to check, or go on holding.</p>;
      return (
        <p class="reason">
          Enough for {plan.manner.care} care. {hasLiveView(plan) && 'Live view still sharp? '}Accept it, or go on holding.
        </p>
      );
    default:
      return <p class="reason">{reasonInWords(phase.next)}</p>;
  }
}
