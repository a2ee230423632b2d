// The end of the walk: what was ticked and read is with the sweep, and the first hold can come.
import { useEffect, useRef } from 'preact/hooks';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { words } from '../../words/catalogue.ts';
import { BenchNotes } from './benchNotes.tsx';

interface Props {
  readonly record: BenchRecord;
  readonly isKept: boolean;
  readonly leadsTo: string;
  readonly onGo: () => void;
}

export function WalkDone({ record, isKept, leadsTo, onGo }: Props) {
  const { speak, done } = words('setUp');
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <section class="step" aria-label={done.label}>
      <p class="show">{speak('done')}</p>
      {!isKept && (
        <p class="fault" role="alert">
          {done.tooLate}
        </p>
      )}
      <BenchNotes bench={record} />
      <button ref={button} type="button" class="chief" onClick={onGo}>
        {leadsTo}
      </button>
    </section>
  );
}
