// For whatever begins a sweep: where none can begin, the sentence that says why, to be shown where it was asked for.
import { useState } from 'preact/hooks';
import type { Beginning } from '../session/session.ts';
import { useSession } from '../useSession.ts';

export interface Beginnings {
  readonly refusal: string;
  begin(beginning: Beginning): Promise<void>;
}

export function useBeginning(): Beginnings {
  const session = useSession();
  const [refusal, setRefusal] = useState('');
  return {
    refusal,
    async begin(beginning) {
      const begun = await session.begin(beginning);
      setRefusal(begun.ok ? '' : begun.fault);
    },
  };
}
