// The bench as it stands: whose it is and what follows from what is known and typed, or what is missing.
import { useLayoutEffect } from 'preact/hooks';
import { useSurroundings } from '../useSession.ts';
import { enteredAt } from './fields.ts';
import { knownOf } from './known.ts';
import { reckon, type Reckoned } from './reckon.ts';
import { standFor } from './rig.ts';
import { subjectOf, type BenchSubject, type Missing } from './subject.ts';

export type BenchNow = { readonly subject: BenchSubject; readonly reckoned: Reckoned } | { readonly missing: Missing };

export function useBench(): BenchNow {
  const { session, start, bench } = useSurroundings();
  const draft = start.draft.value;
  const subject = subjectOf(session, draft);
  const sweep = session.sweep.value?.id;
  const { kit, records, proofs } = session;
  useLayoutEffect(() => {
    const standing = subjectOf(session, draft);
    if (typeof standing === 'string') return;
    const entered = enteredAt(bench);
    const measured = entered.distance === null ? null : reckon(entered, standing).distance;
    standFor(bench, standing, measured, knownOf(session, draft, standing.focalLength));
  }, [session, bench, draft, sweep, kit.value, records.value, proofs.value]);
  return typeof subject === 'string' ? { missing: subject } : { subject, reckoned: reckon(enteredAt(bench), subject) };
}
