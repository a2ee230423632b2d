// Telling the sweep a word by key or by pointer. `set` needs a value, so it opens the number entry instead.
import { useCallback } from 'preact/hooks';
import type { By } from '../../sweep/event.ts';
import type { Word } from '../../sweep/inputs.ts';
import { inputOf } from '../../sweep/meaning.ts';
import { useSession } from '../useSession.ts';

export function useTell(by: By, openEntry: () => void): (word: Word) => void {
  const session = useSession();
  return useCallback(
    (word) => {
      if (word === 'set') openEntry();
      else session.input(inputOf(word, by));
    },
    [session, by, openEntry],
  );
}
