// Why this value, or what the offer means.
import { findingOf } from '../../sweep/finding.ts';
import type { SweepState } from '../../sweep/state.ts';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { hasLiveView } from '../../sweep/turn.ts';
import { reasonInWords } from '../../voice/reasons.ts';
import { CHECK_WORDS, OFFER_WORDS } from '../outcome/words.ts';

export function ReasonLine({ sweep: { phase, plan, troubles } }: { readonly sweep: SweepState }) {
  switch (phase.name) {
    case 'checking':
    case 'turning':
    case 'finished':
      return null;
    case 'offered': {
      const finding = findingOf(phase.outcome, troubles);
      if (finding.is === 'sure') return <p class="reason">{OFFER_WORDS.enough({ care: plan.manner.care, look: hasLiveView(plan) })}</p>;
      if (finding.is !== 'doubtful') return <p class="reason">{OFFER_WORDS.asItStands}</p>;
      return <p class="reason">{isHopeless(finding.trouble) ? CHECK_WORDS.noMoreHolds : CHECK_WORDS.firstThis}</p>;
    }
    default:
      return <p class="reason">{reasonInWords(phase.next)}</p>;
  }
}
