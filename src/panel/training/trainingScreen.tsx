// The trainer: short holds on the practice light, harder as the person gets better, and in words what came of them.
import { useEffect } from 'preact/hooks';
import { isSwitchKey } from '../keys/keys.ts';
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { RoundOver } from './roundOver.tsx';
import { RoundUnderWay } from './roundUnderWay.tsx';
import { TrainingStanding } from './standing.tsx';
import { useTrainer } from './useTraining.ts';

export function TrainingScreen() {
  const { way } = useSurroundings();
  const trainer = useTrainer();
  const training = trainer.training.value;
  const isUnderWay = training !== null && training.phase.name !== 'finished';
  useSwitchToBegin(isUnderWay ? null : trainer.begin);
  if (isUnderWay) return <RoundUnderWay trainer={trainer} training={training} />;
  return (
    <>
      <Heading onBack={() => way.back()}>Train your eye</Heading>
      {training ? <RoundOver training={training} /> : <p>{WHAT}</p>}
      <button type="button" class="chief" onClick={trainer.begin}>
        {training ? 'Another round' : 'Begin a round'}
      </button>
      <TrainingStanding />
    </>
  );
}

/** One press begins a round, unless what has the focus wants the key itself. */
function useSwitchToBegin(begin: (() => void) | null): void {
  useEffect(() => {
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

const WHAT =
  'Ten holds of two seconds on the practice light. Tell each as in a sweep: by voice, by key, by pointer or by the one switch. Two right ' +
  'in a row, and late and flickering lights become harder to see; one wrong, and they become easier.';
