// A word that is understood now, with its key; clicking it tells it. What tells a light shows its mark and the course of such a hold,
// what tells the arrows shows them.
import { HoldCourse } from '../lights/holdCourse.tsx';
import { ArrowsShape } from '../strip/arrowsShape.tsx';
import { LightShape } from '../strip/lightShape.tsx';
import { capOf } from '../keys/keys.ts';
import type { Word } from '../../sweep/inputs.ts';
import type { ShownLight } from '../../practice/fourLights.ts';
import type { Arrows } from '../../sweep/verdict.ts';
import { taught } from '../../words/taught.ts';

interface Props {
  readonly word: Word;
  readonly tell: (word: Word) => void;
}

/** A click leaves the focus where it is, so that Enter and Space stay with the switch. */
const keepFocus = (event: Event): void => event.preventDefault();

const LIGHT_OF: Partial<Record<Word, ShownLight>> = { solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' };

const ARROWS_OF: Partial<Record<Word, Arrows>> = { left: 'left', right: 'right', balanced: 'balanced', lopsided: 'lopsided' };

export function WordButton({ word, tell }: Props) {
  const [light, arrows] = [LIGHT_OF[word], ARROWS_OF[word]];
  return (
    <button type="button" class="word" data-word={word} onMouseDown={keepFocus} onClick={() => tell(word)}>
      {light && <LightShape light={light} />}
      {arrows && <ArrowsShape arrows={arrows} />}
      <span>{taught(word)}</span>
      <kbd>{capOf(word)}</kbd>
      {light && <HoldCourse light={light} />}
    </button>
  );
}
