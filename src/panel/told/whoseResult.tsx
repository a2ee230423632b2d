// At the end of a sweep that nobody has named yet: its name, asked for once.
import type { SweepState } from '../../sweep/state.ts';
import { useSession } from '../useSession.ts';
import { isOpen, toldOf } from './open.ts';
import { Whose } from './whose.tsx';

export function WhoseResult({ sweep }: { readonly sweep: SweepState }) {
  const session = useSession();
  const { subject, practice, transfer } = sweep.plan;
  const parts = toldOf(subject, session.kit.value);
  const held = sweep.holds.length + sweep.spent.length > 0;
  if (practice || transfer || !held || session.role.value !== 'owner' || !isOpen(parts)) return null;
  return <Whose parts={parts} tell={(told) => session.describe(told)} />;
}
