// A finished sweep as it is looked at, right after it and years later in the logbook: everything on it follows from one finding.
import type { ComponentChildren } from 'preact';
import { findingOf, type Finding } from '../../sweep/finding.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import type { Steps } from '../../units.ts';
import { Strip } from '../strip/strip.tsx';
import { TroubleNote, WhatIsToBeChecked } from '../trouble/troubleNote.tsx';
import { words } from '../../words/catalogue.ts';
import { CarriedFacts, CarriedResult } from './carried.tsx';
import { BandFacts, BandResult } from './result.tsx';
import { Revealed } from './revealed.tsx';
import { BareResult, DoubtfulResult, PlainChecks } from './troubled.tsx';

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
  /** The value to enter, where it is another than the one found. */
  readonly enter?: Steps | undefined;
  /** What to do about it, right below what came out. */
  readonly children?: ComponentChildren;
}

/** A practice camera keeps its true band to itself while there is still something to measure. */
export function OutcomeView({ sweep, outcome, enter, children }: Props) {
  const { holds, seconds } = outcome.tally;
  const finding = findingOf(outcome, sweep.troubles);
  const say = words('result').holds;
  return (
    <>
      <CameOut finding={finding} outcome={outcome} enter={enter} />
      {children}
      {finding.is !== 'doubtful' && <Facts sweep={sweep} outcome={outcome} />}
      {outcome.found === 'carried over' && <p class="muted small">{say.aside}</p>}
      <Strip sweep={sweep} />
      <p class="muted small">{say.made(holds, seconds)}</p>
      {sweep.spent.length > 0 && <p class="muted small">{say.spent(sweep.spent.length)}</p>}
      {finding.is === 'doubtful' && (
        <>
          <WhatIsToBeChecked of={finding.trouble} />
          {finding.others.map((found) => (
            <TroubleNote key={found.trouble} found={found} />
          ))}
        </>
      )}
      {transferPlan(sweep, outcome) === null && <Revealed plan={sweep.plan} outcome={outcome} troubles={sweep.troubles} />}
    </>
  );
}

export function CameOut({ finding, outcome, enter }: { readonly finding: Finding } & Pick<Props, 'outcome' | 'enter'>) {
  if (finding.is === 'doubtful') return <DoubtfulResult trouble={finding.trouble} />;
  switch (outcome.found) {
    case 'band':
      return <BandResult outcome={outcome} enter={enter ?? outcome.chosen} />;
    case 'carried over':
      return <CarriedResult outcome={outcome} />;
    default:
      return <BareResult outcome={outcome} />;
  }
}

function Facts({ sweep: { plan }, outcome }: Pick<Props, 'sweep' | 'outcome'>) {
  switch (outcome.found) {
    case 'band':
      return <BandFacts outcome={outcome} />;
    case 'carried over':
      return <CarriedFacts outcome={outcome} scale={plan.scale} />;
    default:
      return <PlainChecks outcome={outcome} />;
  }
}
