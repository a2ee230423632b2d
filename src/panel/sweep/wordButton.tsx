// A word that is understood now, with its key; clicking it tells it.
import { LightShape } from '../strip/lightShape.tsx';
import { capOf } from '../keys/keys.ts';
import type { Word } from '../../sweep/inputs.ts';
import { TAUGHT } from '../../hearing/languages/en/words.ts';
import type { Light } from '../../sweep/verdict.ts';

interface Props {
  readonly word: Word;
  readonly tell: (word: Word) => void;
}

/** A click leaves the focus where it is, so that Enter and Space stay with the switch. */
const keepFocus = (event: Event): void => event.preventDefault();

const LIGHT_OF: Partial<Record<Word, Light>> = { solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' };

export function WordButton({ word, tell }: Props) {
  const light = LIGHT_OF[word];
  return (
    <button type="button" class="word" data-word={word} onMouseDown={keepFocus} onClick={() => tell(word)}>
      {light && <LightShape light={light} />}
      <span>{TAUGHT[word]}</span>
      <kbd>{capOf(word)}</kbd>
    </button>
  );
}
