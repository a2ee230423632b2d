// The end of the walk: what was ticked and read is with the sweep, and the first hold can come.
import { useEffect, useRef } from 'preact/hooks';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { BenchNotes } from './benchNotes.tsx';

interface Props {
  readonly record: BenchRecord;
  readonly isKept: boolean;
  readonly leadsTo: string;
  readonly onGo: () => void;
}

export function WalkDone({ record, isKept, leadsTo, onGo }: Props) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <section class="step" aria-label="Set up">
      <p class="show">Set up. Ready for the first hold.</p>
      {!isKept && (
        <p class="fault" role="alert">
          The first hold was taken already, so the set-up is not kept with this sweep: walk through it before the next one.
        </p>
      )}
      <BenchNotes bench={record} />
      <button ref={button} type="button" class="chief" onClick={onGo}>
        {leadsTo}
      </button>
    </section>
  );
}
