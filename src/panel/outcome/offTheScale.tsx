// What can be done about a band that no correction reaches whole: its width can be measured with the focus set aside, and
// what was found can be printed for a workshop.
import { useState } from 'preact/hooks';
import { transferPlan } from '../../sweep/transfer/opened.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { SweepState } from '../../sweep/state.ts';
import { useSession } from '../useSession.ts';
import { CHIEF_WORDS } from './words.ts';

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
        Page for the workshop
      </button>
    </>
  );
}

function MeasureWidth({ sweep: { id, plan }, chief }: { readonly sweep: SweepState; readonly chief: boolean }) {
  const session = useSession();
  const [fault, setFault] = useState('');
  const begin = async (): Promise<void> => {
    const begun = await session.begin({ with: 'transfer', record: id });
    if (!begun.ok) setFault(begun.sentence);
  };
  return (
    <section class="card" aria-labelledby="measure-width">
      <h2 id="measure-width">Find its centre by its width</h2>
      <p>The band is as wide wherever the focus stands. With the focus set a little aside all of it falls on the scale, and its width shows where the centre is.</p>
      {plan.practice ? (
        <p class="small">The practice camera turns its own ring, and shows its true band afterwards.</p>
      ) : (
        <ol class="small">
          <li>Leave camera, lens and target as they are.</li>
          <li>In live view turn the focus ring a little, until just off sharp. The panel tells if it was the wrong way.</li>
          <li>Sweep as before, and do not touch the ring meanwhile.</li>
          <li>Afterwards focus critically again.</li>
        </ol>
      )}
      {fault && (
        <p class="fault small" role="alert">
          {fault}
        </p>
      )}
      <button type="button" class={chief ? 'chief' : ''} onClick={() => void begin()}>
        {CHIEF_WORDS['measure the width']}
      </button>
    </section>
  );
}
