// The face: the value to set, large enough to read from two metres, in a track that fills while the half-press is held.
import { BigValue } from '../parts/bigValue.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import type { SweepState } from '../../sweep/state.ts';
import { faceOf } from './face.ts';

export function FaceView({ sweep }: { readonly sweep: SweepState }) {
  const { now } = useSession();
  const say = words('sweep').face;
  const { name } = sweep.phase;
  const { caption, value, use, run, secondsLeft, line } = faceOf(sweep, now.value);
  return (
    <section class="face" aria-label={say.label}>
      <svg class="track" aria-hidden="true">
        <rect class="groove" />
        <rect class="run" pathLength={1} stroke-dasharray={`${run} 1`} data-run={run > 0} />
      </svg>
      <p class="caption">{caption}</p>
      {value !== null && <BigValue label={say.value[use]} value={value} />}
      <p class="line">
        {secondsLeft !== null && <b class="seconds">{secondsLeft}</b>}
        <span>{line}</span>
      </p>
      <output class="unseen" aria-label={say.hold} aria-live="polite">
        {(name === 'holding' || name === 'judging') && say.news[name]}
      </output>
    </section>
  );
}
