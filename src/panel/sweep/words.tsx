// A group of words that are understood now.
import type { Word } from '../../sweep/inputs.ts';
import { WordButton } from './wordButton.tsx';

interface Props {
  readonly label: string;
  /** The label is drawn, not only told to those who hear the screen. */
  readonly shown?: boolean;
  /** Words about the sweep as a whole, drawn closer together. */
  readonly aside?: boolean;
  readonly words: readonly Word[];
  readonly tell: (word: Word) => void;
}

export function WordButtons({ label, shown = false, aside = false, words, tell }: Props) {
  if (words.length === 0) return null;
  return (
    <fieldset>
      <legend class={shown ? 'muted small' : 'unseen'}>{label}</legend>
      <div class={aside ? 'words aside' : 'words'}>
        {words.map((word) => (
          <WordButton key={word} word={word} tell={tell} />
        ))}
      </div>
    </fieldset>
  );
}
