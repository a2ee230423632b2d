// The end of a sweep.
import { useCallback } from 'preact/hooks';
import { useKeys } from '../keys/useKeys.ts';
import { Heading } from '../parts/heading.tsx';
import { Troubles } from '../parts/troubles.tsx';
import { useSession } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import type { BandOutcome, Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import { useTell } from '../sweep/useTell.ts';
import { Estimates, usePlaced } from '../bench/placedValue.tsx';
import { EnterForm } from '../logbook/enterForm.tsx';
import { late } from '../parts/late.tsx';
import { isPlanned } from '../plan/isPlanned.ts';
import { CarriedSteps } from './carriedSteps.tsx';
import { NextSteps } from './nextSteps.tsx';
import { OffTheScale } from './offTheScale.tsx';
import { OutcomeView } from './outcomeView.tsx';

const WhoseResult = late(async () => (await import('../told/whoseResult.tsx')).WhoseResult);
const PlanProgress = late(async () => (await import('../plan/planProgress.tsx')).PlanProgress);

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
}

/** What to enter, and that it was entered; a band may be placed on purpose. */
function ToDo({ sweep, outcome }: Props) {
  const { subject, scale } = sweep.plan;
  if (outcome.found === 'carried over') return <CarriedSteps sweep={sweep} outcome={outcome} />;
  if (outcome.found !== 'band') return <EnterForm about={[{ subject, record: sweep.id }]} scale={scale} suggested={null} />;
  return <Found sweep={sweep} outcome={outcome} />;
}

function Found({ sweep, outcome }: { readonly sweep: SweepState; readonly outcome: BandOutcome }) {
  const { subject, scale, bench } = sweep.plan;
  const placed = usePlaced({ outcome, scale, stored: bench });
  const value = placed?.ok ? placed.value.chosen : outcome.chosen;
  return (
    <>
      <Estimates outcome={outcome} scale={scale} placed={placed} />
      <NextSteps value={value} />
      <EnterForm key={value} about={[{ subject, record: sweep.id }]} scale={scale} suggested={value} />
    </>
  );
}

export function OutcomeScreen({ sweep, outcome }: Props) {
  const session = useSession();
  const nothing = useCallback(() => undefined, []);
  useKeys(useTell('key', nothing));
  const { lens, details } = subjectInWords(sweep.plan.subject);
  const planned = isPlanned(session.plan.value, sweep);
  const practice = sweep.plan.practice !== null;
  return (
    <>
      <Heading>{lens}</Heading>
      <p class="muted small">{details}</p>
      <Troubles />
      <OutcomeView sweep={sweep} outcome={outcome} />
      <WhoseResult sweep={sweep} />
      <OffTheScale sweep={sweep} outcome={outcome} />
      {!practice && <ToDo sweep={sweep} outcome={outcome} />}
      {planned && <PlanProgress />}
      <button type="button" class={transferPlan(sweep, outcome) ? '' : 'chief'} onClick={() => (practice ? session.leave() : session.nextLens())}>
        {practice ? 'To the start' : 'Next lens'}
      </button>
      <button type="button" onClick={() => session.input({ told: 'undo', by: 'pointer', heard: null })}>
        Back to the sweep
      </button>
    </>
  );
}
