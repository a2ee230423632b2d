// How far something long on this screen is, and what it is; null while nothing long goes on, or it takes no time worth telling.
import { useCallback, useMemo, useState } from 'preact/hooks';
import { createStages } from '../session/howFar.ts';
import type { HowFar } from '../../stepwise.ts';
import type { FilesWords } from '../../words/filesWords.ts';

type What = keyof FilesWords['howFar'];

export interface Long {
  readonly now: { readonly what: What; readonly share: number } | null;
  /** Does this, which tells how far it is. */
  readonly through: <Value>(what: What, work: (tell: (far: HowFar) => void) => Promise<Value>) => Promise<Value>;
}

export function useHowFar(): Long {
  const progress = useMemo(createStages, []);
  const [what, setWhat] = useState<What | null>(null);
  const share = progress.share.value;
  const through = useCallback<Long['through']>(
    async (next, work) => {
      progress.over();
      setWhat(next);
      try {
        return await work(progress.stage(0, 1));
      } finally {
        progress.over();
        setWhat(null);
      }
    },
    [progress],
  );
  return { now: what === null || share === null ? null : { what, share }, through };
}
