// What any window changes in the store, taken in as it comes, or held back while what is here is still being read or replaced
// as a whole: nothing that happens meanwhile is lost.
import type { Stored } from '../../logbook/stored.ts';
import type { Store } from '../../platform/storage.ts';

export interface Changes {
  /** From now on changes wait; what comes back lets them in, without those of keys that are known already. */
  hold(): (isKnown?: (key: string) => boolean) => void;
}

export function watchChanges(store: Pick<Store, 'onChange'>, takeIn: (changes: Stored) => void): Changes {
  let holds = 0;
  let waiting: Stored[] = [];
  store.onChange((changes) => {
    if (holds > 0) waiting.push(changes);
    else takeIn(changes);
  });
  return {
    hold() {
      holds += 1;
      return (isKnown = () => false) => {
        waiting = waiting.map((changes) => Object.fromEntries(Object.entries(changes).filter(([key]) => !isKnown(key))));
        holds -= 1;
        if (holds > 0) return;
        const come = waiting.filter((changes) => Object.keys(changes).length > 0);
        waiting = [];
        for (const changes of come) takeIn(changes);
      };
    },
  };
}
