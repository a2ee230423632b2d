// Begins a sweep of what was told, with the bench that was set up for it. What was typed goes only when the sweep is there.
import { useState } from 'preact/hooks';
import type { Preview } from './preview.ts';
import { distanceOf } from '../../kit/told.ts';
import { useSurroundings } from '../useSession.ts';
import { EMPTY_DRAFT } from './draft.ts';

export interface Begins {
  readonly refusal: string;
  refuse(sentence: string): void;
  begin(wanted: Pick<Preview, 'about' | 'parts'>): Promise<void>;
}

export function useBegin(): Begins {
  const { session, start, bench } = useSurroundings();
  const [refusal, setRefusal] = useState('');
  return {
    refusal,
    refuse: setRefusal,
    async begin({ about, parts }) {
      setRefusal('');
      const setUp = bench.peek().noted && (await import('../bench/setUpFor.ts').catch(() => null));
      const distance = distanceOf(parts, session.kit.peek());
      const begun = await session.begin({ with: 'told', about, ...setUp?.setUpFor({ ...parts, distance }, bench) });
      if (!begun.ok) return setRefusal(begun.fault);
      start.change(EMPTY_DRAFT);
      setUp?.forget(bench);
    },
  };
}
