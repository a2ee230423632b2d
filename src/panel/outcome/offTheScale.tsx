// What can be done about a band that no correction reaches whole: its width can be measured with the focus set aside, and
// what was found can be printed for a workshop.
import { transferPlan } from '../../sweep/transfer/opened.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { Refusal } from '../parts/refusal.tsx';
import { useBeginning } from '../start/useBeginning.ts';
import { useSession } from '../useSession.ts';

interface Props {
  readonly sweep: SweepState;
  readonly outcome: Outcome;
  /** Measuring the width is the step that matters. */
  readonly chief?: boolean;
}

export function OffTheScale({ sweep, outcome, chief = true }: Props) {
  const session = useSession();
  if (outcome.found === 'band' || outcome.found === 'nothing') return null;
  const { sweep: live } = session;
  const free = live.value === null || live.value.id === sweep.id;
  return (
    <>
      {free && transferPlan(sweep, outcome) && <MeasureWidth sweep={sweep} chief={chief} />}
      <button type="button" onClick={() => session.openPage(`workshop.html#${encodeURIComponent(sweep.id)}`)}>
        {words('result').width.workshop}
      </button>
    </>
  );
}

function MeasureWidth({ sweep: { id, plan }, chief }: { readonly sweep: SweepState; readonly chief: boolean }) {
  const say = words('result').width;
  const { refusal, begin } = useBeginning();
  return (
    <section class="card" aria-labelledby="measure-width">
      <h2 id="measure-width">{say.title}</h2>
      <p>{say.why}</p>
      {plan.practice ? (
        <p class="small">{say.practice}</p>
      ) : (
        <ol class="small">
          {say.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      )}
      <Refusal sentence={refusal} small />
      <button type="button" class={chief ? 'chief' : ''} onClick={() => void begin({ with: 'transfer', record: id })}>
        {say.measure}
      </button>
    </section>
  );
}
