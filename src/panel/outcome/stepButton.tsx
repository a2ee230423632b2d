// A step on from a result: the same as its word and its key. The key is drawn by the style sheet, as the name is heard without it.
import { capOf } from '../keys/keys.ts';
import { inputOf } from '../../sweep/meaning.ts';
import { useSession } from '../useSession.ts';

interface Props {
  readonly word: 'entered' | 'next' | 'undo';
  readonly label: string;
  readonly chief?: boolean;
}

export function StepButton({ word, label, chief = false }: Props) {
  const session = useSession();
  return (
    <button
      type="button"
      class={chief ? 'chief' : ''}
      aria-label={label}
      aria-keyshortcuts={capOf(word)}
      data-key={capOf(word)}
      onClick={() => session.input(inputOf(word, 'pointer'))}
    >
      {label}
    </button>
  );
}
