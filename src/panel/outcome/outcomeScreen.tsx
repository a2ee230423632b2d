// The end of a sweep.
import { useCallback } from 'preact/hooks';
import { useKeys } from '../keys/useKeys.ts';
import { Heading } from '../parts/heading.tsx';
import { Troubles } from '../parts/troubles.tsx';
import { useSession } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { useTell } from '../sweep/useTell.ts';
import { EnterForm } from '../logbook/enterForm.tsx';
import { late } from '../parts/late.tsx';
import { isPlanned } from '../plan/isPlanned.ts';
import { NextSteps } from './nextSteps.tsx';
import { OutcomeView } from './outcomeView.tsx';

const PlanProgress = late(async () => (await import('../plan/planProgress.tsx')).PlanProgress);

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
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
      {outcome.found === 'band' && !practice && <NextSteps outcome={outcome} />}
      {!practice && (
        <EnterForm
          about={[{ subject: sweep.plan.subject, record: sweep.id }]}
          scale={sweep.plan.scale}
          suggested={outcome.found === 'band' ? outcome.chosen : null}
        />
      )}
      {planned && <PlanProgress />}
      <button type="button" class="chief" onClick={() => session.leave()}>
        {planned ? 'Go on with the plan' : 'New sweep'}
      </button>
      <button type="button" onClick={() => session.input({ told: 'undo', by: 'pointer', heard: null })}>
        Back to the sweep
      </button>
    </>
  );
}
