// What to do with the value: enter it, then prove it. The panel cannot do either.
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';

interface Props {
  readonly value: Steps;
  readonly marked: Steps | null;
}

export function NextSteps({ value, marked }: Props) {
  const say = words('result').next;
  return (
    <section aria-label={say.title}>
      <p>{marked === null ? say.enter(value) : say.marked(marked)}</p>
      {marked !== null && <p>{say.prove}</p>}
      <p class="muted small">{words('trouble').toCheck.manual}</p>
    </section>
  );
}
