// The line under the face: why this value, or, where the sweep asks something, what it asks and on what evidence.
import type { SweepState } from '../../sweep/state.ts';
import { reasonInWords } from '../../voice/reasons.ts';
import { driftInWords } from '../words/drift.ts';

export function Reason({ phase, plan }: SweepState) {
  switch (phase.name) {
    case 'checking':
      return (
        <section class="notice" aria-label="Check the focus">
          <p>{driftInWords(phase.drift)}</p>
          <p>Leave the ring alone and look in live view: is the target still sharp?</p>
        </section>
      );
    case 'offered':
      return <p class="reason">Enough for {plan.manner.care} care. Accept it, or go on holding.</p>;
    case 'finished':
      return null;
    default:
      return <p class="reason">{reasonInWords(phase.next)}</p>;
  }
}
