// One switch is enough for a whole sweep: what a press, two presses and a long press mean in each phase.
import { Fragment } from 'preact';
import { PressShape } from '../sweep/pressShape.tsx';
import type { Phase } from '../../sweep/state.ts';
import { PRESSES, type Gesture } from '../../sweep/understood.ts';
import { words } from '../../words/catalogue.ts';

export function PressTable() {
  return (
    <section aria-labelledby="presses">
      <h2 id="presses">One switch</h2>
      <p>
        Space, Enter, Page Down, Page Up, a pedal or clicker that sends one of them, and the large button are all the same switch.
      </p>
      <p class="presses">
        {KINDS.map(({ press, how }) => (
          <span key={press}>
            <PressShape press={press} /> {how}
          </span>
        ))}
      </p>
      <dl class="presses">
        {PHASES.map(({ phase, when }) => (
          <Fragment key={phase}>
            <dt>{when}</dt>
            {PRESSES[phase].map(({ press, means }) => (
              <dd key={press}>
                <PressShape press={press} /> {words('sweep').press.means[means]}
              </dd>
            ))}
          </Fragment>
        ))}
      </dl>
    </section>
  );
}

const KINDS: readonly { readonly press: Gesture; readonly how: string }[] = [
  { press: 'short', how: 'a press' },
  { press: 'double', how: 'two presses at once' },
  { press: 'long', how: 'a press kept for more than half a second' },
  { press: 'kept, double', how: 'a long press, which begins a hold, and then two presses in it' },
];

const PHASES: readonly { readonly phase: Phase['name']; readonly when: string }[] = [
  { phase: 'dialling', when: 'While you dial' },
  { phase: 'holding', when: 'During the hold' },
  { phase: 'judging', when: 'After the end tone' },
  { phase: 'offered', when: 'When the finish is offered' },
  { phase: 'paused', when: 'While paused' },
  { phase: 'checking', when: 'When asked about the focus' },
  { phase: 'turning', when: 'When asked to turn the focus' },
  { phase: 'finished', when: 'At the result' },
];
