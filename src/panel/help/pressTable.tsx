// One switch is enough for a whole sweep: what a press, two presses and a long press mean in each phase.
import { Fragment } from 'preact';
import { ScreenRoom } from '../parts/room.tsx';
import { PressShape } from '../sweep/pressShape.tsx';
import type { Phase } from '../../sweep/state.ts';
import { PRESSES, type Gesture } from '../../sweep/understood.ts';
import { words } from '../../words/catalogue.ts';

export function PressTable() {
  const say = words('help').presses;
  return (
    <ScreenRoom title={say.title}>
      <p>{say.about}</p>
      <p class="presses">
        {KINDS.map((press) => (
          <span key={press}>
            <PressShape press={press} /> {say.how[press]}
          </span>
        ))}
      </p>
      <dl class="presses">
        {PHASES.map((phase) => (
          <Fragment key={phase}>
            <dt>{say.when[phase]}</dt>
            {PRESSES[phase].map(({ press, means }) => (
              <dd key={press}>
                <PressShape press={press} /> {words('sweep').press.means[means]}
              </dd>
            ))}
          </Fragment>
        ))}
      </dl>
    </ScreenRoom>
  );
}

const KINDS: readonly Gesture[] = ['short', 'double', 'long', 'kept, double'];

const PHASES: readonly Phase['name'][] = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'turning', 'finished'];
