// What to do with the value: enter it, then check it. The panel cannot do either.
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

interface Props {
  readonly value: Steps;
  readonly marked: Steps | null;
  /** What was measured, where it has a name. */
  readonly situation: string | null;
}

export function NextSteps({ value, marked, situation }: Props) {
  const { way } = useSurroundings();
  const say = words('result').next;
  return (
    <section aria-label={say.title}>
      <p>{marked === null ? say.enter(value) : say.marked(marked)}</p>
      {marked !== null && (
        <>
          <p>{say.check}</p>
          <button type="button" onClick={() => way.go({ at: 'photographs', situation })}>
            {say.photographs}
          </button>
        </>
      )}
      <p class="muted small">{words('trouble').toCheck.manual}</p>
    </section>
  );
}
