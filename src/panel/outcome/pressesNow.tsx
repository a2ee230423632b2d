// What the one switch means at a result, for those who run it with a pedal.
import { PressShape } from '../sweep/pressShape.tsx';
import type { SweepState } from '../../sweep/state.ts';
import { understood } from '../../sweep/understood.ts';
import { words } from '../../words/catalogue.ts';

export function PressesNow({ sweep }: { readonly sweep: SweepState }) {
  return (
    <ul class="plain now muted small" aria-label={words('result').next.presses}>
      {understood(sweep).presses.map(({ press, means }) => (
        <li key={press}>
          <PressShape press={press} /> {words('sweep').press.means[means]}
        </li>
      ))}
    </ul>
  );
}
