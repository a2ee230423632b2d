// What the one switch means at a result, for those who run it with a pedal.
import { PressShape } from '../sweep/pressShape.tsx';
import type { SweepState } from '../../sweep/state.ts';
import { understood } from '../../sweep/understood.ts';
import { PRESS_MEANS } from '../../voice/vocabulary/en.ts';
import { STEP_WORDS } from './words.ts';

export function PressesNow({ sweep }: { readonly sweep: SweepState }) {
  return (
    <ul class="plain now muted small" aria-label={STEP_WORDS.presses}>
      {understood(sweep).presses.map(({ press, means }) => (
        <li key={press}>
          <PressShape press={press} /> {PRESS_MEANS[means]}
        </li>
      ))}
    </ul>
  );
}
