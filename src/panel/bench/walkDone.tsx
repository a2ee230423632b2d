// The end of the walk: what was ticked and read goes with the sweep, and the first hold can come: by the switch, as every step.
import { useEffect, useRef } from 'preact/hooks';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import type { StepPicture } from '../../optics/setUp/stepPicture.ts';
import { words } from '../../words/catalogue.ts';
import { BenchNotes } from './benchNotes.tsx';
import { StepDrawing } from './stepDrawing.tsx';
import { Refusal } from '../parts/refusal.tsx';

interface Props {
  readonly record: BenchRecord;
  /** How the first hold is taken. */
  readonly picture: StepPicture;
  readonly isKept: boolean;
  /** Why the sweep could not be begun; empty otherwise. */
  readonly refusal: string;
}

export function WalkDone({ record, picture, isKept, refusal }: Props) {
  const { speak, done } = words('setUp');
  const place = useRef<HTMLElement>(null);
  useEffect(() => place.current?.focus(), []);
  return (
    <section ref={place} class="step" tabIndex={-1} aria-label={done.label}>
      <div class="shown">
        <StepDrawing picture={picture} />
        <p class="show">{speak('done')}</p>
      </div>
      <Refusal sentence={isKept ? '' : done.tooLate} />
      <BenchNotes bench={record} />
      <Refusal sentence={refusal} />
    </section>
  );
}
