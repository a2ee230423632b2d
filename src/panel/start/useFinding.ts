// Look-up as its part of the panel is read; until then nothing is found, and a new name can be started all the same.
import { useEffect, useMemo, useState } from 'preact/hooks';
import { readWords } from '../../words/catalogue.ts';
import type { InWords } from '../../words/inWords.ts';
import { useSession } from '../useSession.ts';
import type * as Finding from './finding.ts';
import type { Shelved } from '../../logbook/shelf.ts';

export interface Found {
  readonly all: readonly Shelved[];
  /** The same for what is typed by now, before it is drawn. */
  readonly now: (query: string) => readonly Shelved[];
  /** Where each situation stands. */
  readonly of: (situation: string) => Shelved | undefined;
  readonly answerTo: ((found: Shelved) => InWords) | null;
}

export function useFinding(query: string): Found {
  const session = useSession();
  const [part, setPart] = useState<typeof Finding | null>(null);
  useEffect(
    () =>
      void Promise.all([import('./finding.ts'), readWords('lookUp')]).then(
        ([read]) => setPart(read),
        () => undefined,
      ),
    [],
  );
  const [kit, records, byHand, entries] = [session.kit.value, session.records.value, session.byHand.value, session.entries.value];
  const finder = useMemo(() => part?.finderIn({ kit, records, byHand, entries }, session.clock()) ?? null, [part, session, kit, records, byHand, entries]);
  const all = useMemo(() => (part && finder ? part.lookUp(finder, query) : []), [part, finder, query]);
  return {
    all,
    now: (typed) => (part && finder ? part.lookUp(finder, typed) : []),
    of: (situation) => finder?.shelf.find(({ subject }) => subject.situation === situation),
    answerTo: part?.answerTo ?? null,
  };
}
