// Every word understood at this moment, with its key: the answers to the question in hand, the arrows that may still
// complete the last verdict, and what is about the sweep as a whole. Undo has its place beside what it takes back, and
// holding is the switch.
import type { Word } from '../../sweep/inputs.ts';
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { WordButtons } from './words.tsx';

interface Props {
  readonly now: readonly Word[];
  readonly tell: (word: Word) => void;
}

const ASIDE: readonly Word[] = ['undo', 'repeat', 'pause', 'set', 'skip', 'finish', 'far view', 'help'];
const ARROWS: readonly Word[] = ['left', 'right', 'balanced', 'lopsided'];

export function Answers({ sweep, now, tell }: Props & { readonly sweep: SweepState }) {
  const say = words('sweep').understood;
  const answers = now.filter((word) => !ASIDE.includes(word) && word !== 'holding');
  const held = sweep.phase.name === 'holding' || sweep.phase.name === 'judging';
  if (held) return <WordButtons label={say.answers} words={answers} tell={tell} />;
  return (
    <>
      <WordButtons label={say.answers} words={answers.filter((word) => !ARROWS.includes(word))} tell={tell} />
      <WordButtons label={say.arrows} shown words={answers.filter((word) => ARROWS.includes(word))} tell={tell} />
    </>
  );
}

export const Asides = ({ now, tell }: Props) => (
  <WordButtons aside label={words('sweep').understood.asides} words={now.filter((word) => ASIDE.includes(word) && word !== 'undo')} tell={tell} />
);
