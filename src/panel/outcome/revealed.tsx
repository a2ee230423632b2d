// After a practice sweep: the band that the practice camera really had, beside what was found.
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { revealedInWords } from './revealed.ts';

interface Props {
  readonly plan: Plan;
  readonly outcome: Outcome;
  readonly troubles: readonly Trouble[];
}

export function Revealed({ plan, outcome, troubles }: Props) {
  const sentences = revealedInWords(plan, outcome, troubles);
  if (sentences === null) return null;
  return (
    <section class="notice" aria-label="The practice camera">
      {sentences.wrong && <p>{sentences.wrong}</p>}
      <p>{sentences.truth}</p>
      {sentences.comparison && <p>{sentences.comparison}</p>}
    </section>
  );
}
