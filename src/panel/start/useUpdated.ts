// Whether this is the first start since the version changed. Once it has been shown, this version is the one that was seen.
import { useEffect, useState } from 'preact/hooks';
import type { Installed } from '../../platform/installed.ts';
import { useSession } from '../useSession.ts';

/** `shown`: the start stands there, with nothing under way. */
export function useUpdated(shown: boolean): boolean {
  const { installed } = useSession();
  const [updated] = useState(() => isUpdated(installed));
  useEffect(() => {
    if (shown) installed.see();
  }, [shown, installed]);
  return updated && shown;
}

/** Where none was seen before, it is the first there is. */
function isUpdated({ lastSeen, version }: Installed): boolean {
  const last = lastSeen();
  return last !== null && last !== version();
}
