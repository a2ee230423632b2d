// In place of a value: the holds contradict each other, and somebody has to look at the focus.
import type { Drift } from '../../sweep/end/drift.ts';
import { driftInWords } from '../words/drift.ts';

export function CheckFocus({ drift }: { readonly drift: Drift }) {
  return (
    <section class="check" aria-label="Check the focus">
      <h2>Check the focus</h2>
      <p>{driftInWords(drift)}</p>
      <p>
        <b>Leave the ring alone and look in live view: still sharp?</b>
      </p>
    </section>
  );
}
