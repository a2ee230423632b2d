// A finished sweep as it is looked at, right after it and years later in the logbook.
import { Strip } from '../strip/strip.tsx';
import { inMinutes } from '../words/figures.ts';
import { holdsCounted } from '../words/quantities.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Scale } from '../../sweep/scale.ts';
import type { SweepState } from '../../sweep/state.ts';
import { CarriedResult } from './carried.tsx';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import { BandResult } from './result.tsx';
import { Revealed } from './revealed.tsx';
import { TroubleNote } from '../trouble/troubleNote.tsx';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { TroubledResult } from './troubled.tsx';

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
}

interface Found {
  readonly outcome: Outcome;
  readonly scale: Scale;
  readonly cause: Trouble | undefined;
  readonly gap: boolean;
}

function Result({ outcome, scale, cause, gap }: Found) {
  switch (outcome.found) {
    case 'band':
      return <BandResult outcome={outcome} gap={gap} />;
    case 'carried over':
      return <CarriedResult outcome={outcome} scale={scale} />;
    default:
      return <TroubledResult outcome={outcome} cause={cause} />;
  }
}

/** A practice camera keeps its true band to itself while there is still something to measure. */
export function OutcomeView({ sweep, outcome }: Props) {
  const { holds, seconds } = outcome.tally;
  /** A trouble that leaves no band stands in its place. */
  const cause = outcome.found === 'nothing' || outcome.found === 'past the limit' ? sweep.troubles.find(isHopeless) : undefined;
  const gap = sweep.troubles.some(({ trouble }) => trouble === 'hole in the band');
  return (
    <>
      <Result outcome={outcome} scale={sweep.plan.scale} cause={cause} gap={gap} />
      {sweep.troubles.map((found) => found !== cause && <TroubleNote key={found.trouble} found={found} />)}
      {outcome.found === 'carried over' && <p class="muted small">The holds with the focus set aside:</p>}
      <Strip sweep={sweep} />
      <p class="muted small">
        {holdsCounted(holds)} in {inMinutes(seconds)}
        {sweep.spent.length > 0 && `, ${holdsCounted(sweep.spent.length)} of them before the focus moved and not counted`}
      </p>
      {transferPlan(sweep, outcome) === null && <Revealed plan={sweep.plan} outcome={outcome} troubles={sweep.troubles} />}
    </>
  );
}
