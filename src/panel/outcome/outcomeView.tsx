// A finished sweep as it is looked at, right after it and years later in the logbook.
import { Strip } from '../strip/strip.tsx';
import { inMinutes } from '../words/figures.ts';
import { holdsCounted } from '../words/quantities.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { BandResult } from './result.tsx';
import { Revealed } from './revealed.tsx';
import { TroubleNote } from '../trouble/troubleNote.tsx';
import { isHopeless } from '../../sweep/trouble/troublesOf.ts';
import { TroubledResult } from './troubled.tsx';

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
}

export function OutcomeView({ sweep, outcome }: Props) {
  const { holds, seconds } = outcome.tally;
  /** A trouble that leaves no band stands in its place. */
  const cause = outcome.found === 'band' ? undefined : sweep.troubles.find(isHopeless);
  const gap = sweep.troubles.some(({ trouble }) => trouble === 'hole in the band');
  return (
    <>
      {outcome.found === 'band' ? <BandResult outcome={outcome} gap={gap} /> : <TroubledResult outcome={outcome} cause={cause} />}
      {sweep.troubles.map((found) => found !== cause && <TroubleNote key={found.trouble} found={found} />)}
      <Strip sweep={sweep} />
      <p class="muted small">
        {holdsCounted(holds)} in {inMinutes(seconds)}
        {sweep.spent.length > 0 && `, ${holdsCounted(sweep.spent.length)} of them before the focus moved and not counted`}
      </p>
      <Revealed plan={sweep.plan} outcome={outcome} troubles={sweep.troubles} />
    </>
  );
}
