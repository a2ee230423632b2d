// That the keys go to the page, or that they are back. A press of the pointer anywhere in the panel brings them back; this
// line is the place where it tells nothing.
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';

/** `afloat`: where no place is kept for it, it lies over the foot of the screen. */
export function KeysNotice({ afloat = false }: { readonly afloat?: boolean }) {
  const look = afloat ? 'minded afloat' : 'minded';
  switch (useSession().keysGo.value) {
    case 'elsewhere':
      return (
        <p class={look} role="alert" data-keys="elsewhere">
          {words('firstHold').keys.elsewhere}
        </p>
      );
    case 'back':
      return (
        <output class={look} data-keys="back">
          {words('firstHold').keys.back}
        </output>
      );
    case 'here':
      return null;
  }
}
