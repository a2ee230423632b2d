// Whose correction this is.
import type { SweepState } from '../../sweep/state.ts';
import { inMetres, inMillimetres } from '../words/quantities.ts';

export function SweepHeader({ sweep, onLeave }: { readonly sweep: SweepState; readonly onLeave: () => void }) {
  const { lens, body, focalLength, distance } = sweep.plan.subject;
  return (
    <header class="subject">
      <button type="button" class="back" aria-label="Leave for the start; the sweep waits" onClick={onLeave}>
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d="M10 2 4 8l6 6" fill="none" stroke="currentColor" stroke-width="2" />
        </svg>
      </button>
      <div>
        <h1>{lens}</h1>
        <p class="muted small">
          {body} · {inMillimetres(focalLength)} at {inMetres(distance)}
        </p>
      </div>
    </header>
  );
}
