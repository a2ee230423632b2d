// One step of the walk: its sentence, its cautions, and what may be entered there.
import { useState } from 'preact/hooks';
import { latest, type BenchReading } from '../../optics/setUp/reading.ts';
import type { SetUpStep } from '../../optics/setUp/step.ts';
import { pictureOf } from '../../optics/setUp/stepPicture.ts';
import type { WalkState } from '../../optics/setUp/walk.ts';
import { useSurroundings } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
import { Cautions } from './cautions.tsx';
import { cornersOf } from './given.ts';
import { ReadingFields, type Typable } from './readingFields.tsx';
import { StepDrawing } from './stepDrawing.tsx';
import { readingOf } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import { enteredAt } from './fields.ts';
import { Refusal } from '../parts/refusal.tsx';

interface Props {
  readonly step: SetUpStep;
  readonly state: WalkState;
  readonly reckoned: Reckoned;
  readonly onRead: (reading: BenchReading) => void;
}

export function StepView({ step, state, reckoned, onRead }: Props) {
  const say = words('setUp');
  const { liveView } = say.step;
  const { reads } = step;
  const read = reads && latest(state.bench, reads);
  return (
    <section class="step" aria-label={say.step.label}>
      <div class="shown">
        <StepDrawing picture={pictureOf(step.said)} />
        <p class="show">{say.show(step.said)}</p>
      </div>
      {state.bench.ticked.includes(step.said.id) && <p class="muted small">{say.step.before}</p>}
      {reads === 'live view' && (
        <fieldset class="row">
          <legend>{liveView.ask}</legend>
          <button type="button" onClick={() => onRead({ reads, asked: 'start', sharp: true })}>
            {liveView.sharp}
          </button>
          <button type="button" onClick={() => onRead({ reads, asked: 'start', sharp: false })}>
            {liveView.not}
          </button>
        </fieldset>
      )}
      {isTypable(reads) && <Entry key={step.said.id} kind={reads} reckoned={reckoned} onRead={onRead} />}
      {read && <output>{say.step.kept(words('readings').reading(read))}</output>}
      <Cautions all={step.cautions} />
    </section>
  );
}

const isTypable = (kind: SetUpStep['reads']): kind is Typable => kind !== null && kind !== 'live view';

/** The fields of a reading, and the sentence when they do not add up to one. */
function Entry({ kind, reckoned, onRead }: Pick<Props, 'reckoned' | 'onRead'> & { readonly kind: Typable }) {
  const { bench } = useSurroundings();
  const [fault, setFault] = useState('');
  const keep = (event: Event): void => {
    event.preventDefault();
    const reading = readingOf(kind, enteredAt(bench), reckoned, cornersOf(reckoned));
    setFault(reading.ok ? '' : words('bench').fault(reading.fault));
    if (reading.ok) onRead(reading.value);
  };
  return (
    <form class="stack" noValidate onSubmit={keep}>
      <ReadingFields kind={kind} reckoned={reckoned} />
      <Refusal sentence={fault} />
      <button type="submit">{words('setUp').step.keep}</button>
    </form>
  );
}
