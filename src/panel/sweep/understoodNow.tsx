// Every word understood at this moment, with its key: the answers to the question in hand, the arrows that may still
// complete the last verdict, and what is about the sweep as a whole. Undo has its place beside what it takes back, and
// holding is the switch.
import type { Word } from '../../sweep/inputs.ts';
import type { SweepState } from '../../sweep/state.ts';
import { WordButtons } from './words.tsx';

interface Props {
  readonly words: readonly Word[];
  readonly tell: (word: Word) => void;
}

const ASIDE: readonly Word[] = ['undo', 'repeat', 'pause', 'set', 'skip', 'finish', 'help'];
const ARROWS: readonly Word[] = ['left', 'right', 'balanced', 'lopsided'];

export function Answers({ sweep, words, tell }: Props & { readonly sweep: SweepState }) {
  const answers = words.filter((word) => !ASIDE.includes(word) && word !== 'holding');
  const held = sweep.phase.name === 'holding' || sweep.phase.name === 'judging';
  if (held) return <WordButtons label="Answers understood now" words={answers} tell={tell} />;
  return (
    <>
      <WordButtons label="Answers understood now" words={answers.filter((word) => !ARROWS.includes(word))} tell={tell} />
      <WordButtons label="Arrows of the last hold" shown words={answers.filter((word) => ARROWS.includes(word))} tell={tell} />
    </>
  );
}

export const Asides = ({ words, tell }: Props) => (
  <WordButtons aside label="Also understood now" words={words.filter((word) => ASIDE.includes(word) && word !== 'undo')} tell={tell} />
);
