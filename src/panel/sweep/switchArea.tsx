// The one switch on the screen. It says what a press means at this moment, and what a double or a long one would; where it
// begins the hold it is also the word for that. It takes the focus whenever nothing else has it.
import { useEffect, useRef } from 'preact/hooks';
import { capOf } from '../keys/keys.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { PressShape } from './pressShape.tsx';
import { useContact } from './useContact.ts';
import { taught } from '../../words/taught.ts';

export function SwitchArea() {
  const { pressed, understood } = useSession();
  const contact = useContact();
  const button = useRef<HTMLButtonElement>(null);
  const [first, ...others] = understood.value?.presses ?? [];
  useEffect(() => {
    if (document.activeElement === document.body) button.current?.focus({ preventScroll: true });
  });
  if (first === undefined) return null;
  const { means: does } = words('sweep').press;
  return (
    <button ref={button} type="button" class="switch" data-down={pressed.value !== null} {...contact}>
      <span class="means">{does[first.means]}</span>
      {first.means === 'holding' && (
        <span class="also">
          {taught('holding')} <kbd>{capOf('holding')}</kbd>
        </span>
      )}
      {others.map(({ press, means }) => (
        <span key={press} class="also">
          <PressShape press={press} /> {does[means]}
        </span>
      ))}
    </button>
  );
}
