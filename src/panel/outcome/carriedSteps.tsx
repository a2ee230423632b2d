// What to do after a width transfer: the focus still stands aside, and a pair that the scale does not reach wants service.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';

interface Props {
  readonly outcome: CarriedOutcome;
  readonly marked: Steps | null;
}

export function CarriedSteps({ outcome: { chosen, inside, service }, marked }: Props) {
  const say = words('result').next;
  const enter = service ? say.enterMeanwhile(chosen) : say.enter(chosen);
  return (
    <section aria-labelledby="next-steps">
      <h2 id="next-steps">{say.title}</h2>
      <ol>
        <li>{say.focusAgain}</li>
        {inside && <li>{marked === null ? enter : say.marked(marked)}</li>}
        {inside && <li>{say.check}</li>}
        {service && <li>{say.service}</li>}
      </ol>
      <p class="muted small">{words('trouble').toCheck.manual}</p>
    </section>
  );
}
