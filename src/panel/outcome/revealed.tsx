// After a practice sweep: what the practice camera really was.
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { revealedInWords } from './revealed.ts';
import { REVEALED_WORDS } from './words.ts';

interface Props {
  readonly plan: Plan;
  readonly outcome: Outcome;
  readonly troubles: readonly Trouble[];
}

export function Revealed({ plan, outcome, troubles }: Props) {
  const sentences = revealedInWords(plan, outcome, troubles);
  if (sentences === null) return null;
  return (
    <section class="notice" aria-label={REVEALED_WORDS.region}>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}
