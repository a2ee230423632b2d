// The keyboard during a sweep: the switch keys and one key a word, wherever the focus is, but never while something is
// typed. A focused button keeps Enter and Space, but the switch itself is one with the keys.
import { useLayoutEffect } from 'preact/hooks';
import type { Word } from '../../sweep/inputs.ts';
import { waitOf } from '../../platform/clock.ts';
import { heeded } from '../../sweep/heeded.ts';
import type { Seconds } from '../../units.ts';
import { useSession } from '../useSession.ts';
import { isSwitchKey, wordOfKey } from './keys.ts';

/** `tell` gets the word of a key that is understood now: by the sweep, or by what stands in its place. */
export function useKeys(tell: (word: Word) => void, instead?: readonly Word[]): void {
  const session = useSession();
  // With the screen, not after it is painted: a key pressed the moment it appears is heard.
  useLayoutEffect(() => {
    let down: string | null = null;
    const pressed = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.altKey || event.metaKey || isTaken(event)) return;
      if (isSwitchKey(event.key)) {
        event.preventDefault();
        if (down !== null || event.repeat) return;
        down = event.key;
        session.contact('down', waitOf(event));
        return;
      }
      const word = wordOfKey(event.key, instead ?? heeded(session.understood.peek()?.words ?? []));
      if (word === null || event.repeat) return;
      event.preventDefault();
      tell(word);
    };
    const released = (event: KeyboardEvent): void => {
      if (event.key !== down) return;
      // Space clicks a focused button when it comes up.
      event.preventDefault();
      up(waitOf(event));
    };
    /** Whatever was down counts as up: its keyup will never arrive. */
    const lost = (): void => up();
    const up = (waited?: Seconds): void => {
      if (down === null) return;
      down = null;
      session.contact('up', waited);
    };
    document.addEventListener('keydown', pressed);
    document.addEventListener('keyup', released);
    window.addEventListener('blur', lost);
    return () => {
      lost();
      document.removeEventListener('keydown', pressed);
      document.removeEventListener('keyup', released);
      window.removeEventListener('blur', lost);
    };
  }, [session, tell, instead]);
}

/** Does the element that has the focus want this key itself? */
function isTaken({ target, key, defaultPrevented }: KeyboardEvent): boolean {
  if (defaultPrevented) return true;
  if (!(target instanceof Element)) return false;
  if (target.closest('.switch') !== null) return false;
  if (target.closest('input:not([type=radio], [type=checkbox]), select, textarea') !== null) return true;
  return (key === ' ' || key === 'Enter') && target.closest('button, a, summary, input') !== null;
}
