// One hold after another: the light, what is asked, and the same switch, keys and words as in a sweep.
import { useEffect, useMemo } from 'preact/hooks';
import { HOLDS_A_ROUND } from '../../practice/training/round.ts';
import type { Training } from '../../practice/training/training.ts';
import { useKeys } from '../keys/useKeys.ts';
import { Heading } from '../parts/heading.tsx';
import { FinderView } from '../practice/finder.tsx';
import { useLamp } from '../practice/useLamp.ts';
import { words } from '../../words/catalogue.ts';
import { SwitchArea } from '../sweep/switchArea.tsx';
import { WordButtons } from '../sweep/words.tsx';
import { Around, useSession, useSurroundings } from '../useSession.ts';
import type { Trainer } from './useTraining.ts';

interface Props {
  readonly trainer: Trainer;
  readonly training: Training;
}

export function RoundUnderWay({ trainer, training }: Props) {
  const around = useSurroundings();
  const inside = useMemo(() => ({ ...around, session: trainer.session }), [around, trainer]);
  return (
    <Around.Provider value={inside}>
      <Heading onBack={trainer.stop}>
        {words('training').hold.title(training.holds.length + (training.phase.name === 'finished' ? 0 : 1), HOLDS_A_ROUND)}
      </Heading>
      <Hold trainer={trainer} training={training} />
    </Around.Provider>
  );
}

function Hold({ trainer, training }: Props) {
  const { phase } = training;
  const say = words('training').hold;
  const { understood } = useSession();
  useKeys(trainer.tell);
  useEffect(() => trainer.listen(), [trainer]);
  const lamp = useLamp('course' in phase ? phase.course : null, phase);
  const answers = understood.value?.words.filter((word) => word !== 'holding') ?? [];
  return (
    <section class="training" data-training={phase.name} aria-label={say.label}>
      <FinderView {...lamp} withArrows={false} />
      <p class="asked">{asked(training)}</p>
      <SwitchArea />
      <WordButtons label={say.answers} words={answers} tell={trainer.tell} />
    </section>
  );
}

function asked({ phase, holds, tooSoon }: Training): string {
  const say = words('training').hold;
  const last = holds.at(-1);
  if (phase.name === 'holding') return tooSoon ? say.tooSoon : say.watch;
  if (phase.name === 'judging') return say.over;
  return last ? say.was(last) : say.ready;
}
