// In place of a value: the holds contradict each other, and somebody has to look at the focus.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { driftInWords } from '../words/drift.ts';

/** `aside`: the focus was set aside on purpose. */
export function CheckFocus({ drift, rival, aside }: { readonly drift: Drift; readonly rival?: Rival; readonly aside: boolean }) {
  return (
    <section class="check" tabIndex={0} aria-label="Check the focus">
      <h2>Check the focus</h2>
      <p>{driftInWords(drift, rival)}</p>
      <p>
        <b>Leave the ring alone and look in live view: {aside ? 'as far off sharp as it was?' : 'still sharp?'}</b>
      </p>
    </section>
  );
}
