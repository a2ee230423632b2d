// The line of chips over a sweep that goes on. Where the panel counts in, the sweep waits while something is typed.
import type { SweepState } from '../../sweep/state.ts';
import { useSession } from '../useSession.ts';
import { toldOf } from './open.ts';
import { ToldLine } from './toldLine.tsx';

export function SweepTold({ sweep }: { readonly sweep: SweepState }) {
  const session = useSession();
  const { subject, scale, arrows, manner } = sweep.plan;
  const parts = toldOf(subject, session.kit.value);
  const wait = (): void => {
    if (manner.pace.set === 'counted' && session.understood.peek()?.words.includes('pause')) session.input({ told: 'pause', by: 'pointer', heard: null });
  };
  return <ToldLine small parts={parts} onBody={{ scale, arrows }} tell={(told) => session.describe(told)} onOpen={wait} />;
}
