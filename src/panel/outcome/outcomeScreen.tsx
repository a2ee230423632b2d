// The end of a sweep: what came out, and the one step that matters now.
import { useCallback, useEffect } from 'preact/hooks';
import { findingOf } from '../../sweep/finding.ts';
import { toEnter } from '../../sweep/toEnter.ts';
import type { BandOutcome, Outcome } from '../../sweep/end/outcome.ts';
import { isNamed } from '../../sweep/named.ts';
import type { SweepState } from '../../sweep/state.ts';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import type { Steps } from '../../units.ts';
import { Estimates, usePlaced } from '../bench/placedValue.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { BodyWarnings } from '../kit/bodyWarnings.tsx';
import { FarSight, useFarWanted } from '../far/farSight.tsx';
import { EnterForm } from '../logbook/enterForm.tsx';
import { Heading } from '../parts/heading.tsx';
import { late } from '../parts/late.tsx';
import { MishapList } from '../parts/troubles.tsx';
import { isPlanned } from '../plan/isPlanned.ts';
import { pictureSourceOf } from '../photographs/pictureSource.ts';
import { entryKey } from '../../logbook/keys.ts';
import { markOf } from '../session/ending.ts';
import { useTell } from '../sweep/useTell.ts';
import { WhatToCheck } from '../trouble/whatToCheck.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession, useSurroundings } from '../useSession.ts';
import { subjectInWords } from '../words/subjects.ts';
import { CarriedSteps } from './carriedSteps.tsx';
import { chiefOf } from './chief.ts';
import { NextSteps } from './nextSteps.tsx';
import { OffTheScale } from './offTheScale.tsx';
import { CameOut, OutcomeView } from './outcomeView.tsx';
import { PressesNow } from './pressesNow.tsx';
import { StepButton } from './stepButton.tsx';

const WhoseResult = late(async () => (await import('../told/whoseResult.tsx')).WhoseResult, 'told');
const PlanProgress = late(async () => (await import('../plan/planProgress.tsx')).PlanProgress, 'plan');

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
}

export function OutcomeScreen({ sweep, outcome }: Props) {
  const nothing = useCallback(() => undefined, []);
  useKeys(useTell('key', nothing));
  const { lens, details } = subjectInWords(sweep.plan.subject);
  const wanted = useFarWanted();
  /** Without a value there is more to read than fits, away from the finder. */
  const far = wanted && toEnter(outcome, sweep.troubles) !== null;
  const isPlaceable = sweep.plan.practice === null && outcome.found === 'band' && findingOf(outcome, sweep.troubles).is === 'sure';
  return (
    <FarSight far={far}>
      <Heading>{lens}</Heading>
      {!far && <p class="muted small">{details}</p>}
      <MishapList />
      {isPlaceable ? <Placed sweep={sweep} outcome={outcome} far={far} /> : <Whole sweep={sweep} outcome={outcome} far={far} />}
    </FarSight>
  );
}

/** A band may be placed on purpose: then another value than the one found is to be entered, and marked. */
function Placed({ sweep, outcome, far }: { readonly sweep: SweepState; readonly outcome: BandOutcome; readonly far: boolean }) {
  const session = useSession();
  const { scale, bench } = sweep.plan;
  const placed = usePlaced({ outcome, scale, stored: bench });
  const enter = placed?.ok ? placed.value.chosen : outcome.chosen;
  useEffect(() => {
    session.propose(enter);
    return () => session.propose(null);
  }, [session, enter]);
  return <Whole sweep={sweep} outcome={outcome} far={far} enter={enter} estimates={<Estimates outcome={outcome} scale={scale} placed={placed} />} />;
}

interface WholeProps extends Props {
  readonly far: boolean;
  readonly enter?: Steps;
  readonly estimates?: preact.JSX.Element;
}

function Whole({ sweep, outcome, far, enter, estimates }: WholeProps) {
  const { session, way } = useSurroundings();
  const { plan } = sweep;
  const pictures = pictureSourceOf(plan, outcome);
  const finding = findingOf(outcome, sweep.troubles);
  const practice = plan.practice !== null;
  const marked = markOf(session.entries.value, sweep.id);
  // What is shown as marked is on disk.
  const mark = marked && !session.unwritten.value.has(entryKey(marked.id)) ? marked.value : null;
  const measurable = transferPlan(sweep, outcome) !== null;
  const chief = chiefOf(finding, { practice, marked: mark !== null, measurable, holds: outcome.tally.holds });
  const value = enter ?? toEnter(outcome, sweep.troubles);
  const planned = isPlanned(session.plan.value, sweep);
  const say = words('result').next;
  const next = planned ? say.plan : say.lens;
  if (far) {
    return (
      <>
        <CameOut finding={finding} outcome={outcome} enter={enter} />
        {chief === 'mark' && <StepButton word="entered" chief label={say.mark} />}
        <StepButton word="next" chief={chief !== 'mark'} label={next} />
        <PressesNow sweep={sweep} />
      </>
    );
  }
  return (
    <>
      <OutcomeView sweep={sweep} outcome={outcome} enter={enter}>
        {!practice && outcome.found === 'carried over' && finding.is !== 'doubtful' && <CarriedSteps outcome={outcome} marked={mark} />}
        {!practice && value !== null && (
          <>
            {isNamed(plan.subject) && <BodyWarnings situation={plan.subject.situation} />}
            {outcome.found === 'band' && <NextSteps value={value} marked={mark} situation={isNamed(plan.subject) ? plan.subject.situation : null} />}
          </>
        )}
        {pictures !== null && (
          <button type="button" onClick={() => way.go({ at: 'practice pictures', of: pictures })}>
            {words('result').practice.pictures}
          </button>
        )}
        {chief === 'mark' && <StepButton word="entered" chief label={say.mark} />}
        {chief === 'what to check' && <WhatToCheck />}
        {chief === 'next lens' && <StepButton word="next" chief label={next} />}
        {chief === 'measure the width' && <OffTheScale sweep={sweep} outcome={outcome} chief />}
        <WhoseResult sweep={sweep} />
        <PressesNow sweep={sweep} />
        {planned && <PlanProgress />}
      </OutcomeView>
      {estimates}
      {chief !== 'measure the width' && <OffTheScale sweep={sweep} outcome={outcome} chief={false} />}
      {!practice && finding.is !== 'nothing' && (
        <details>
          <summary>{value === null ? say.allTheSame : say.otherwise}</summary>
          <EnterForm key={value} about={[{ subject: plan.subject, record: sweep.id }]} scale={plan.scale} suggested={value} warned />
        </details>
      )}
      {chief !== 'next lens' && <StepButton word="next" label={next} />}
      <StepButton word="undo" label={mark === null ? say.backToSweep : say.takeMarkBack} />
    </>
  );
}
