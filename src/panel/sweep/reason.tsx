// Why this value, or what the offer means.
import type { SweepState } from '../../sweep/state.ts';
import { reasonInWords } from '../../voice/reasons.ts';

export function Reason({ sweep: { phase, plan } }: { readonly sweep: SweepState }) {
  switch (phase.name) {
    case 'checking':
    case 'finished':
      return null;
    case 'offered':
      return (
        <p class="reason">
          Enough for {plan.manner.care} care. {!plan.practice && 'Live view still sharp? '}Accept it, or go on holding.
        </p>
      );
    default:
      return <p class="reason">{reasonInWords(phase.next)}</p>;
  }
}
