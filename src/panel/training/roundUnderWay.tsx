// One hold after another: the light, what is asked, and the same switch, keys and words as in a sweep.
import { useEffect, useMemo } from 'preact/hooks';
import { HOLDS_A_ROUND } from '../../practice/training/round.ts';
import type { Training } from '../../practice/training/training.ts';
import { useKeys } from '../keys/useKeys.ts';
import { Heading } from '../parts/heading.tsx';
import { FinderView } from '../practice/finder.tsx';
import { useLamp } from '../practice/useLamp.ts';
import { SwitchArea } from '../sweep/switchArea.tsx';
import { WordButtons } from '../sweep/words.tsx';
import { Around, useSession, useSurroundings } from '../useSession.ts';
import type { Trainer } from './useTraining.ts';
import { heldInWords } from './words.ts';

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
        Hold {training.holds.length + (training.phase.name === 'finished' ? 0 : 1)} of {HOLDS_A_ROUND}
      </Heading>
      <Hold trainer={trainer} training={training} />
    </Around.Provider>
  );
}

function Hold({ trainer, training }: Props) {
  const { phase } = training;
  const { understood } = useSession();
  useKeys(trainer.tell);
  useEffect(() => trainer.listen(), [trainer]);
  const lamp = useLamp('course' in phase ? phase.course : null, phase);
  const lights = understood.value?.words.filter((word) => word !== 'holding') ?? [];
  return (
    <section class="training" data-training={phase.name} aria-label="Training hold">
      <FinderView {...lamp} withArrows={false} />
      <p class="asked">{asked(training)}</p>
      <SwitchArea />
      <WordButtons label="Answers understood now" words={lights} tell={trainer.tell} />
    </section>
  );
}

function asked({ phase, holds, tooSoon }: Training): string {
  const last = holds.at(-1);
  if (phase.name === 'holding') return tooSoon ? 'Not yet: hold until the time is up.' : 'Watch the light.';
  if (phase.name === 'judging') return 'The time is up. Did it hold?';
  return last ? heldInWords(last) : 'Press when you are ready.';
}
