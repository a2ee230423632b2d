// After a practice sweep: the band that the practice camera really had, beside what was found.
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import { revealedInWords } from './revealed.ts';

export function Revealed({ plan, outcome }: { readonly plan: Plan; readonly outcome: Outcome }) {
  const sentences = revealedInWords(plan, outcome);
  if (sentences === null) return null;
  return (
    <section class="notice" aria-label="The practice camera">
      <p>{sentences.truth}</p>
      <p>{sentences.comparison}</p>
    </section>
  );
}
