// What each situation was last at; null until the part that works it out has been read.
import { useEffect, useState } from 'preact/hooks';
import { useSession } from '../useSession.ts';
import type { lastValues as LastValues } from './lastValues.ts';

export function useLastValues(): ReadonlyMap<string, string> | null {
  const session = useSession();
  const [part, setPart] = useState<{ readonly lastValues: typeof LastValues } | null>(null);
  // Without it the list stands as it is: only its notes are missing.
  useEffect(() => void import('./lastValues.ts').then(setPart, () => undefined), []);
  return part && part.lastValues(session);
}
