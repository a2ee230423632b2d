// That the keys go to the page, or that they are back. A press of the pointer anywhere in the panel brings them back; this
// line is the place where it tells nothing.
import { useSession } from '../useSession.ts';
import { KEYS_SAID } from './words.ts';

/** `afloat`: where no place is kept for it, it lies over the foot of the screen. */
export function KeysNotice({ afloat = false }: { readonly afloat?: boolean }) {
  const look = afloat ? 'minded afloat' : 'minded';
  switch (useSession().keysGo.value) {
    case 'elsewhere':
      return (
        <p class={look} role="alert" data-keys="elsewhere">
          {KEYS_SAID.elsewhere}
        </p>
      );
    case 'back':
      return (
        <output class={look} data-keys="back">
          {KEYS_SAID.back}
        </output>
      );
    case 'here':
      return null;
  }
}
