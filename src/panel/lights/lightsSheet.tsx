// The four lights over the face, until they are closed: whoever wants to see them again need not leave the sweep.
import { useEffect } from 'preact/hooks';
import { FourLights } from './fourLights.tsx';
import { words } from '../../words/catalogue.ts';

export function LightsSheet({ onClose }: { readonly onClose: () => void }) {
  useEffect(() => {
    const pressed = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') onClose();
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, [onClose]);
  return (
    <section class="sheet" aria-label={words('firstHold').lights.title}>
      <button type="button" class="shut" aria-label={words('firstHold').lights.close} onClick={onClose}>
        {'\u00d7'}
      </button>
      <FourLights />
    </section>
  );
}
