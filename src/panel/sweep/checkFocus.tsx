// In place of a value: the holds contradict each other, and somebody has to look at the focus.
import type { Drift } from '../../sweep/end/drift.ts';
import type { Rival } from '../../sweep/end/story.ts';
import { words } from '../../words/catalogue.ts';

/** `aside`: the focus was set aside on purpose. */
export function CheckFocus({ drift, rival, aside }: { readonly drift: Drift; readonly rival?: Rival; readonly aside: boolean }) {
  const say = words('sweep').checkFocus;
  return (
    <section class="check" tabIndex={0} aria-label={say.title}>
      <h2>{say.title}</h2>
      <p>{say.why(drift, rival)}</p>
      <p>
        <b>{aside ? say.lookAside : say.look}</b>
      </p>
    </section>
  );
}
