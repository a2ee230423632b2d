// From the end of the walk to the first hold: back to the sweep that it was set up for, or into one of what stands on the start, with what
// was ticked and read.
import { useCallback, useLayoutEffect, useRef } from 'preact/hooks';
import { previewOf } from '../start/preview.ts';
import { useBegin } from '../start/useBegin.ts';
import { useSurroundings } from '../useSession.ts';

export interface FirstHold {
  finish(): void;
  /** Why the sweep could not be begun; empty otherwise. */
  readonly refusal: string;
}

export function useFirstHold(): FirstHold {
  const { session, way, start } = useSurroundings();
  const { begin, refusal } = useBegin();
  const beginRef = useRef(begin);
  useLayoutEffect(() => void (beginRef.current = begin));
  /** A second press, while the first is being answered, begins nothing. */
  const beginningRef = useRef(false);
  const finish = useCallback((): void => {
    const sweep = session.sweep.peek();
    if (sweep) {
      if (sweep.phase.name === 'paused') session.input({ told: 'resume', by: 'pointer', heard: null });
      return way.home({ at: 'sweep' });
    }
    if (beginningRef.current) return;
    beginningRef.current = true;
    const wanted = previewOf(start.draft.peek(), { kit: session.kit.peek(), records: session.records.peek(), offers: 'last lens' });
    void beginRef.current(wanted).finally(() => (beginningRef.current = false));
  }, [session, way, start]);
  return { finish, refusal };
}
