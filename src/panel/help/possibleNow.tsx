// What a sweep understands at this moment, each word with what it means and its key, and what the one switch would tell: read off the same
// list as the buttons, the keys and the recogniser. In the help, and in the sweep itself.
import { PressShape } from '../sweep/pressShape.tsx';
import { understood } from '../../sweep/understood.ts';
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { WordRows } from './wordRows.tsx';

export function PossibleNow({ sweep }: { readonly sweep: SweepState }) {
  const { understood: heeded, pressAsked } = useSession();
  const now = heeded.value ?? understood(sweep, pressAsked.value);
  const { when, title } = words('help').presses;
  return (
    <div class="stack">
      <p class="muted small">{when[sweep.phase.name]}</p>
      <WordRows of={now.words} />
      <p class="muted small" id="presses-now">
        {title}
      </p>
      <ul class="plain presses-now" aria-labelledby="presses-now">
        {now.presses.map(({ press, means }) => (
          <li key={press}>
            <PressShape press={press} /> {words('sweep').press.means[means]}
          </li>
        ))}
      </ul>
    </div>
  );
}
