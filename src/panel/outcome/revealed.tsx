// After a practice sweep: what the practice camera really was.
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Plan } from '../../sweep/plan.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { words } from '../../words/catalogue.ts';
import { revealed } from './revealed.ts';

interface Props {
  readonly plan: Plan;
  readonly outcome: Outcome;
  readonly troubles: readonly Trouble[];
}

export function Revealed({ plan, outcome, troubles }: Props) {
  const facts = revealed(plan, outcome, troubles);
  if (facts === null) return null;
  const say = words('result').practice;
  return (
    <section class="notice" aria-label={say.title}>
      {facts.map((fact) => (
        <p key={fact.is}>{say.revealed(fact)}</p>
      ))}
    </section>
  );
}
