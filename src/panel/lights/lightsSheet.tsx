// The four lights, and the arrows where the body has them, over the face, until they are closed: whoever wants to see them again need not leave the sweep.
import { useEffect } from 'preact/hooks';
import { FourArrows } from './fourArrows.tsx';
import { FourLights } from './fourLights.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

export function LightsSheet({ onClose }: { readonly onClose: () => void }) {
  const withArrows = (useSession().sweep.value?.plan.arrows ?? 'absent') !== 'absent';
  useEffect(() => {
    const pressed = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') onClose();
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, [onClose]);
  return (
    // In a low window it scrolls, also by keys.
    <section class="sheet" tabIndex={0} aria-label={words('firstHold').lights.title}>
      <button type="button" class="shut" aria-label={words('firstHold').lights.close} onClick={onClose}>
        {'\u00d7'}
      </button>
      <FourLights />
      {withArrows && <FourArrows brief />}
    </section>
  );
}
