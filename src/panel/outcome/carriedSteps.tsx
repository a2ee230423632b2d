// What to do after a width transfer: the focus still stands aside, and a pair that the scale does not reach wants service.
import { writeSteps } from '../../sweep/scale.ts';
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import type { Steps } from '../../units.ts';
import { STEP_WORDS } from './words.ts';

interface Props {
  readonly outcome: CarriedOutcome;
  readonly marked: Steps | null;
}

export function CarriedSteps({ outcome: { chosen, inside, service }, marked }: Props) {
  const value = writeSteps(marked ?? chosen);
  const enter = service ? STEP_WORDS.enterMeanwhile({ value }) : STEP_WORDS.enter({ value });
  return (
    <section aria-labelledby="next-steps">
      <h2 id="next-steps">{STEP_WORDS.heading}</h2>
      <ol>
        <li>{STEP_WORDS.focusAgain}</li>
        {inside && <li>{marked === null ? enter : STEP_WORDS.marked({ value })}</li>}
        {inside && <li>{STEP_WORDS.prove}</li>}
        {service && <li>{STEP_WORDS.service}</li>}
      </ol>
      <p class="muted small">{STEP_WORDS.manual}</p>
    </section>
  );
}
