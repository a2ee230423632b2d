// The lens that Start measures where nothing is typed: the last one, or the one that was looked up, with its last value.
import type { Shelved } from '../../logbook/shelf.ts';
import { subjectIn } from '../../kit/kit.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';

interface Props {
  readonly situation: string;
  /** Until the logbook has been read, and for a situation it does not know, nothing is said of a value. */
  readonly standing: Shelved | undefined;
  readonly picked: boolean;
}

export function LastOne({ situation, standing, picked }: Props) {
  const kit = useSession().kit.value;
  const known = kit.situations.find(({ id }) => id === situation);
  if (!known) return null;
  const { lens, details } = subjectInWords(subjectIn(kit, known));
  return (
    <section class="last" aria-label={picked ? words('start').last.picked : words('start').last.label}>
      {standing && standing.value !== null && (
        <span class="found" data-found="band">
          {writeSteps(standing.value)}
        </span>
      )}
      <span class="about">
        <b>{lens}</b>
        <small>{details}</small>
        {standing && <small>{inWords(standing)}</small>}
      </span>
    </section>
  );
}

function inWords({ state, value, at }: Shelved): string {
  const say = words('start').last;
  if (state === 'never measured' || at === null) return say.notMeasured;
  return value === null ? say.noValue(at) : say.value(value, state === 'measured' ? 'measured' : 'entered', at);
}
