// The place between the face and the switch: what is most wanted there at the moment. The entry of a value, the practice
// light, what a new person needs to know, or why this value. It has its height whatever stands in it.
import { useEffect } from 'preact/hooks';
import type { Coached } from '../coach/coaching.ts';
import { late } from '../parts/late.tsx';
import { useSession } from '../useSession.ts';
import type { SweepState } from '../../sweep/state.ts';
import { ReasonLine } from './reason.tsx';

/** Read as soon as a practice sweep is on screen, so that it is there for the first hold. */
const Viewfinder = late(async () => (await import('../practice/finder.tsx')).Viewfinder, 'practice');

const Coach = late(async () => (await import('../coach/coach.tsx')).Coach);
const SetValue = late(async () => (await import('./setValue.tsx')).SetValue);

interface Props {
  readonly sweep: SweepState;
  readonly coached: Coached | null;
  readonly setting: boolean;
  readonly onSet: () => void;
}

export function Middle({ sweep, coached, setting, onSet }: Props) {
  const session = useSession();
  const { phase, plan } = sweep;
  const practice = plan.practice !== null;
  useEffect(() => {
    if (practice) Viewfinder.fetch();
  }, [practice]);
  if (setting && 'next' in phase) {
    return (
      <SetValue
        scale={plan.scale}
        from={phase.next.value}
        onClose={onSet}
        onSet={(value) => {
          onSet();
          session.input({ told: 'set', value, by: 'pointer', heard: null });
        }}
      />
    );
  }
  const held = phase.name === 'holding' || phase.name === 'judging';
  if (practice && held) return <Viewfinder sweep={sweep} />;
  return coached ? <Coach coached={coached} /> : <ReasonLine sweep={sweep} />;
}
