// The end of the walk: what was ticked and read is with the sweep, and the first hold can come.
import { useEffect, useRef } from 'preact/hooks';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import { useSurroundings } from '../useSession.ts';
import { BenchNotes } from './benchNotes.tsx';

interface Props {
  readonly record: BenchRecord;
  readonly isKept: boolean;
}

export function WalkDone({ record, isKept }: Props) {
  const { session, way } = useSurroundings();
  const button = useRef<HTMLButtonElement>(null);
  const sweep = session.sweep.value;
  useEffect(() => button.current?.focus(), []);
  const go = (): void => {
    if (sweep?.phase.name === 'paused') session.input({ told: 'resume', by: 'pointer', heard: null });
    way.home({ at: sweep ? 'sweep' : 'start' });
  };
  return (
    <section class="step" aria-label="Set up">
      <p class="show">Set up. Ready for the first hold.</p>
      {!isKept && (
        <p class="fault" role="alert">
          The first hold was taken already, so the set-up is not kept with this sweep: walk through it before the next one.
        </p>
      )}
      <BenchNotes bench={record} />
      <button ref={button} type="button" class="chief" onClick={go}>
        {sweep ? 'To the first hold' : 'To the start'}
      </button>
    </section>
  );
}
