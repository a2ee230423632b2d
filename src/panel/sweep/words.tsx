// Everything that is understood at this moment: what answers the question in hand first, then the rest.
import type { Word } from '../../sweep/inputs.ts';
import { WordButton } from './wordButton.tsx';

interface Props {
  readonly label: string;
  /** Words about the sweep as a whole, drawn closer together. */
  readonly aside?: boolean;
  readonly words: readonly Word[];
  readonly tell: (word: Word) => void;
}

/** Words about the sweep as a whole; the others answer the question in hand. */
const ASIDE: readonly Word[] = ['undo', 'repeat', 'pause', 'set', 'skip', 'finish', 'help'];

export const isAside = (word: Word): boolean => ASIDE.includes(word);

export function Words({ label, aside = false, words, tell }: Props) {
  if (words.length === 0) return null;
  return (
    <fieldset class={aside ? 'words aside' : 'words'} aria-label={label}>
      {words.map((word) => (
        <WordButton key={word} word={word} tell={tell} />
      ))}
    </fieldset>
  );
}
