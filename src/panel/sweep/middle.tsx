// The line between the face and the switch: what is most wanted there at the moment. A trouble, the entry of a value,
// the practice light, or why this value.
import { Troubles } from '../parts/troubles.tsx';
import { Finder } from '../practice/finder.tsx';
import { useSession } from '../useSession.ts';
import type { SweepState } from '../../sweep/state.ts';
import { Reason } from './reason.tsx';
import { SetValue } from './setValue.tsx';

interface Props {
  readonly sweep: SweepState;
  readonly setting: boolean;
  readonly onSet: () => void;
}

export function Middle({ sweep, setting, onSet }: Props) {
  const session = useSession();
  const { phase, plan } = sweep;
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
  if (session.troubles.value.length > 0) return <Troubles />;
  const held = phase.name === 'holding' || phase.name === 'judging';
  return plan.practice !== null && held ? <Finder sweep={sweep} /> : <Reason sweep={sweep} />;
}
