// The plan of a job: made from the kit, then worked off from top to bottom, and picked up again where it stood.
import { useState } from 'preact/hooks';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { PlanForm } from './planForm.tsx';
import { StationList } from './stationList.tsx';
import { minutes, progressInWords, usePlanNow } from './useProgress.ts';

export function PlanScreen() {
  const { session, way } = useSurroundings();
  const now = usePlanNow();
  const [anew, setAnew] = useState(false);
  const [refusal, setRefusal] = useState('');
  if (!now || anew) {
    return (
      <>
        <Heading onBack={() => (anew ? setAnew(false) : way.back())}>Plan</Heading>
        {anew && <p class="notice small">A new plan takes the place of the old one. What was measured stays in the logbook.</p>}
        <PlanForm onPlanned={() => setAnew(false)} />
      </>
    );
  }
  const { next } = now.progress;
  const begin = async (): Promise<void> => {
    const begun = next && (await session.begin({ with: 'kit', situation: next.id }));
    setRefusal(begun && !begun.ok ? begun.sentence : '');
  };
  return (
    <>
      <Heading onBack={() => way.back()}>Plan</Heading>
      <output>{progressInWords(now)}</output>
      <progress aria-label="Measured" max={now.progress.stations.length} value={now.progress.done} />
      {next && session.sweep.value === null && (
        <button type="button" class="chief" onClick={() => void begin()}>
          Measure the next
        </button>
      )}
      {session.sweep.value !== null && <p class="notice small">A sweep is under way. Go on with it from the start first.</p>}
      {refusal && (
        <p class="fault" role="alert">
          {refusal}
        </p>
      )}
      <StationList now={now} />
      <p class="muted small">
        {now.pace.sweeps === 0
          ? `The minutes are a guess, ${minutes(now.pace.perSweep)} a sweep, until you have finished one.`
          : `The minutes go by your own pace, ${minutes(now.pace.perSweep)} a sweep.`}
      </p>
      <button type="button" onClick={() => setAnew(true)}>
        Plan anew
      </button>
    </>
  );
}
