// A finished sweep once more, hold by hold, on the strip as it was.
import { useId, useMemo, useState } from 'preact/hooks';
import type { Journal } from '../../sweep/event.ts';
import { stagesOf, type Stage } from '../../sweep/replayed.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { reasonInWords } from '../../voice/reasons.ts';
import { Strip } from '../strip/strip.tsx';
import { holdInWords } from '../words/holds.ts';
import { holdsCounted } from '../words/quantities.ts';

/** Working the stages out takes a while, so that is left until somebody wants to see them. */
export function Replay({ journal }: { readonly journal: Journal }) {
  const [opened, setOpened] = useState(false);
  return (
    <details onToggle={() => setOpened(true)}>
      <summary>Replay it, hold by hold</summary>
      {opened && <Stages journal={journal} />}
    </details>
  );
}

function Stages({ journal }: { readonly journal: Journal }) {
  const id = useId();
  const stages = useMemo(() => stagesOf(journal), [journal]);
  const [at, setAt] = useState(0);
  const stage = stages[at];
  if (!stage) return null;
  const last = stages.length - 1;
  return (
    <section class="stack" aria-label="Replay">
      <Strip sweep={stage.state} />
      <p aria-live="polite">{happened(stage)}</p>
      <p class="muted small">{asked(stage)}</p>
      <div class="field">
        <label for={id} class="small">
          Step {at + 1} of {last + 1}
        </label>
        <input id={id} type="range" min="0" max={last} step="1" value={at} onInput={(event) => setAt(event.currentTarget.valueAsNumber)} />
      </div>
      <div class="row">
        <button type="button" class="grow" disabled={at === 0} onClick={() => setAt(at - 1)}>
          Earlier
        </button>
        <button type="button" class="grow" disabled={at === last} onClick={() => setAt(at + 1)}>
          Later
        </button>
      </div>
    </section>
  );
}

function happened({ is, state: { holds } }: Stage): string {
  const last = holds.at(-1);
  switch (is) {
    case 'opened':
      return 'Before the first hold.';
    case 'held':
      return last ? `Hold ${holds.length}: ${holdInWords({ value: last.value, ...last.verdict, counts: last.reading.counts })}.` : '';
    case 'taken back':
      return `Taken back: ${holdsCounted(holds.length)} stood.`;
    case 'begun afresh':
      return 'The focus had moved: begun afresh.';
    case 'finished':
      return 'The end of the sweep.';
  }
}

function asked({ state: { phase } }: Stage): string {
  switch (phase.name) {
    case 'finished':
      return '';
    case 'checking':
      return 'The holds contradicted each other: it asked for a look at the focus.';
    case 'turning':
      return 'It asked for the focus to be turned.';
    case 'offered':
      return 'It offered to finish.';
    default:
      return `Next came ${writeSteps(phase.next.value)}: ${reasonInWords(phase.next)}.`;
  }
}
