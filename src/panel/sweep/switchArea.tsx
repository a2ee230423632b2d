// The one switch on the screen. It says what a press means at this moment, and what a double or a long one would.
import { useSession } from '../useSession.ts';
import type { Understood } from '../../sweep/understood.ts';
import { PRESS_MEANS } from '../../voice/vocabulary/en.ts';
import { PressShape } from './pressShape.tsx';
import { useContact } from './useContact.ts';

interface Props {
  readonly presses: Understood['presses'];
  readonly disabled: boolean;
}

export function SwitchArea({ presses, disabled }: Props) {
  const { pressed } = useSession();
  const contact = useContact();
  const [first, ...others] = presses;
  if (first === undefined) return null;
  return (
    <button type="button" class="switch" data-down={pressed.value !== null} disabled={disabled} {...contact}>
      <span class="means">{PRESS_MEANS[first.means]}</span>
      {others.map(({ press, means }) => (
        <span key={press} class="also">
          <PressShape press={press} /> {PRESS_MEANS[means]}
        </span>
      ))}
    </button>
  );
}
