// That the keys go to the page, or that they are back. A press of the pointer anywhere in the panel brings them back; this
// line is the place where it tells nothing.
import { words } from '../../words/catalogue.ts';
import type { KeysGo } from './keysGo.ts';

interface Props {
  readonly go: KeysGo;
  /** Where no place is kept for it, it lies over the foot of the screen. */
  readonly afloat?: boolean;
}

export function KeysNotice({ go, afloat = false }: Props) {
  switch (go) {
    case 'elsewhere':
      return (
        <p class={afloat ? 'minded afloat' : 'minded'} role="alert" data-keys={go}>
          {words('firstHold').keys.elsewhere}
        </p>
      );
    case 'back':
      return (
        <output class={afloat ? 'minded afloat' : 'minded'} data-keys={go}>
          {words('firstHold').keys.back}
        </output>
      );
    case 'here':
      return null;
  }
}
