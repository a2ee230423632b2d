// The plan of a job: made from the kit, then worked off from top to bottom, and picked up again where it stood.
import { useState } from 'preact/hooks';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { Heading } from '../parts/heading.tsx';
import { Refusal } from '../parts/refusal.tsx';
import { useBeginning } from '../start/useBeginning.ts';
import { useSurroundings } from '../useSession.ts';
import { PlanForm } from './planForm.tsx';
import { StationList } from './stationList.tsx';
import { progressInWords, usePlanNow } from './useProgress.ts';

export function PlanScreen() {
  const say = words('plan');
  const { session, way } = useSurroundings();
  const now = usePlanNow();
  const [anew, setAnew] = useState(false);
  const { refusal, begin } = useBeginning();
  if (!now || anew) {
    return (
      <>
        <Heading onBack={() => (anew ? setAnew(false) : way.back())}>{say.title}</Heading>
        {anew && <p class="notice small">{say.replaces}</p>}
        <PlanForm onPlanned={() => setAnew(false)} />
      </>
    );
  }
  const { next } = now.progress;
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      <output>{run(progressInWords(now, words('plan')))}</output>
      <progress aria-label={say.measured} max={now.progress.stations.length} value={now.progress.done} />
      {next && session.sweep.value === null && (
        <button type="button" class="chief" onClick={() => void begin({ with: 'kit', situation: next.id })}>
          {say.next}
        </button>
      )}
      {session.sweep.value !== null && <p class="notice small">{say.underWay}</p>}
      <Refusal sentence={refusal} />
      <StationList now={now} />
      <p class="muted small">{say.pace(now.pace)}</p>
      <button type="button" onClick={() => setAnew(true)}>
        {say.anew}
      </button>
    </>
  );
}
