// The far view: value, what to do, time and standing of a sweep fill the panel, to be read from the tripod. Key, word and a press on
// the value switch it on and off alike; it is kept with the settings. What stands in it is drawn anew by styles alone: nothing
// under a finger is replaced.
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { capOf } from '../keys/keys.ts';
import { inputOf } from '../../sweep/meaning.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

/** Whether the person wants it. */
export const useFarWanted = (): boolean => useSession().settings.value.look.far;

interface Props {
  readonly far: boolean;
  readonly children: ComponentChildren;
}

export function FarSight({ far, children }: Props) {
  const session = useSession();
  const turn = (): void => session.input(inputOf('far view', 'pointer'));
  useEffect(() => {
    const pressed = ({ target }: MouseEvent): void => {
      if (target instanceof Element && target.closest('.sight :is(.face, .result)') !== null) session.input(inputOf('far view', 'pointer'));
    };
    document.addEventListener('click', pressed);
    return () => document.removeEventListener('click', pressed);
  }, [session]);
  return (
    <div class="sight" data-far={far}>
      {far && (
        <button
          type="button"
          class="leave"
          aria-label={words('sweep').leaveFarView}
          aria-keyshortcuts={capOf('far view')}
          onMouseDown={keepFocus}
          onClick={turn}
        >
          <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
            <path d="M10 3v7H3M10 10 2.5 2.5M14 21v-7h7M14 14l7.5 7.5" />
          </svg>
        </button>
      )}
      {children}
    </div>
  );
}

/** A click leaves the focus where it is, so that Enter and Space stay with the switch. */
const keepFocus = (event: Event): void => event.preventDefault();
