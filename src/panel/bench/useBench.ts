// The bench as it stands: whose it is and what follows from what was typed; null with the sentence of what is missing.
import { useSurroundings } from '../useSession.ts';
import { reckon, type Reckoned } from './reckon.ts';
import { subjectOf, type BenchSubject } from './subject.ts';
import { typedAt } from './fields.ts';

export type Standing = { readonly subject: BenchSubject; readonly reckoned: Reckoned } | { readonly missing: string };

export function useBench(): Standing {
  const { session, start, bench } = useSurroundings();
  const subject = subjectOf(session, start.draft.value);
  return typeof subject === 'string' ? { missing: subject } : { subject, reckoned: reckon(typedAt(bench), subject) };
}
