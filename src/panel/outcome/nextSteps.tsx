// What to do with the value: enter it, then prove it. The panel cannot do either.
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { STEP_WORDS } from './words.ts';

interface Props {
  readonly value: Steps;
  readonly marked: Steps | null;
}

export function NextSteps({ value, marked }: Props) {
  return (
    <section aria-label={STEP_WORDS.heading}>
      <p>{marked === null ? STEP_WORDS.enter({ value: writeSteps(value) }) : STEP_WORDS.marked({ value: writeSteps(marked) })}</p>
      {marked !== null && <p>{STEP_WORDS.prove}</p>}
      <p class="muted small">{STEP_WORDS.manual}</p>
    </section>
  );
}
