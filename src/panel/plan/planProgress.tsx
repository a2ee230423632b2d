// After a sweep of the plan: how far it is, shown and, once the result has been heard, said.
import { useEffect, useRef } from 'preact/hooks';
import { saidAndShown } from '../../words/catalogue.ts';
import { runIn } from '../../words/run.ts';
import { useSession } from '../useSession.ts';
import { progressInWords, usePlanNow } from './useProgress.ts';

export function PlanProgress() {
  const session = useSession();
  const now = usePlanNow();
  const said = now && saidAndShown('plan', (say, language) => runIn(language, progressInWords(now, say)));
  const sweep = session.sweep.value?.id;
  const kept = session.records.value.some(({ id }) => id === sweep);
  const saidRef = useRef(false);
  useEffect(() => {
    if (!said || !kept || saidRef.current) return;
    saidRef.current = true;
    session.sayNext(said);
  }, [said, kept, session]);
  return said ? <p class="notice small">{said.written}</p> : null;
}
