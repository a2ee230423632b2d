// The trainer: short holds on the practice light, harder as the person gets better, and in words what came of them.
import { useLayoutEffect } from 'preact/hooks';
import { isSwitchKey } from '../keys/keys.ts';
import { Heading } from '../parts/heading.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { RoundOver } from './roundOver.tsx';
import { RoundUnderWay } from './roundUnderWay.tsx';
import { TrainingStanding } from './standing.tsx';
import { useTrainer } from './useTraining.ts';

export function TrainingScreen() {
  const { way } = useSurroundings();
  const say = words('training');
  const trainer = useTrainer();
  const training = trainer.training.value;
  const isUnderWay = training !== null && training.phase.name !== 'finished';
  useSwitchToBegin(isUnderWay ? null : trainer.begin);
  if (isUnderWay) return <RoundUnderWay trainer={trainer} training={training} />;
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      {training ? <RoundOver training={training} /> : <p>{say.about}</p>}
      <button type="button" class="chief" onClick={trainer.begin}>
        {training ? say.another : say.begin}
      </button>
      <TrainingStanding />
    </>
  );
}

/** One press begins a round, unless what has the focus wants the key itself. */
function useSwitchToBegin(begin: (() => void) | null): void {
  // Let go with the screen: the next press belongs to the hold, also when it comes before the next frame.
  useLayoutEffect(() => {
    if (begin === null) return;
    const pressed = (event: KeyboardEvent): void => {
      const { target } = event;
      if (event.repeat || !isSwitchKey(event.key) || event.ctrlKey || event.altKey || event.metaKey) return;
      if (target instanceof Element && target.closest('button, a, input') !== null) return;
      event.preventDefault();
      begin();
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, [begin]);
}
