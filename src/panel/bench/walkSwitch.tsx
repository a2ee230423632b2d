// The one switch during the walk, and its words as buttons with their keys.
import { capOf } from '../keys/keys.ts';
import type { Word } from '../../sweep/inputs.ts';
import { PressShape } from '../sweep/pressShape.tsx';
import { useContact } from '../sweep/useContact.ts';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
import { taught } from '../../words/taught.ts';

interface Props {
  readonly words: readonly Exclude<Word, 'set'>[];
  readonly tell: (word: Word) => void;
  /** What a short press does. */
  readonly means: string;
}

export function WalkSwitch({ words: told, tell, means }: Props) {
  const { pressed } = useSession();
  const contact = useContact();
  return (
    <>
      <button type="button" class="switch" data-down={pressed.value !== null} {...contact}>
        <span class="means">{means}</span>
        <span class="also">
          <PressShape press="double" /> {words('sweep').press.means.back}
        </span>
        <span class="also">
          <PressShape press="long" /> {words('sweep').press.means.repeat}
        </span>
      </button>
      <fieldset class="row" aria-label={words('setUp').also}>
        {told.map((word) => (
          <button key={word} type="button" onClick={() => tell(word)}>
            {taught(word)} <kbd>{capOf(word)}</kbd>
          </button>
        ))}
      </fieldset>
    </>
  );
}
