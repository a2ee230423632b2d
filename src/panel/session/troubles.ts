// What went wrong, as a list for the screen: one entry a kind, so that a fault that comes again is told once, and one that
// the person has put away stays away until it has been mended or changes.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Mishap } from './session.ts';

export interface Mishaps {
  readonly list: ReadonlySignal<readonly Mishap[]>;
  add(id: string, sentence: string, remedy?: Mishap['remedy']): void;
  /** It is mended. */
  clear(id: string): void;
  /** The person has read it. */
  dismiss(id: string): void;
}

export function createTroubles(): Mishaps {
  const list = signal<readonly Mishap[]>([]);
  const dismissed = new Map<string, string>();

  const shown = (id: string): Mishap | undefined => list.value.find((trouble) => trouble.id === id);
  const drop = (id: string): void => {
    if (shown(id)) list.value = list.value.filter((trouble) => trouble.id !== id);
  };
  return {
    list,
    add(id, sentence, remedy = null) {
      if (dismissed.get(id) === sentence || shown(id)?.sentence === sentence) return;
      list.value = [...list.value.filter((trouble) => trouble.id !== id), { id, sentence, remedy }];
    },
    clear(id) {
      dismissed.delete(id);
      drop(id);
    },
    dismiss(id) {
      const trouble = shown(id);
      if (trouble) dismissed.set(id, trouble.sentence);
      drop(id);
    },
  };
}
