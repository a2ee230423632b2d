// What went wrong, as a list for the screen: one entry a kind, so that a fault that comes again is told once.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Trouble } from './session.ts';

export interface Troubles {
  readonly list: ReadonlySignal<readonly Trouble[]>;
  add(id: string, sentence: string, remedy?: Trouble['remedy']): void;
  clear(id: string): void;
}

export function createTroubles(): Troubles {
  const list = signal<readonly Trouble[]>([]);
  const clear = (id: string): void => {
    if (list.value.some((trouble) => trouble.id === id)) list.value = list.value.filter((trouble) => trouble.id !== id);
  };
  return {
    list,
    clear,
    add(id, sentence, remedy = null) {
      list.value = [...list.value.filter((trouble) => trouble.id !== id), { id, sentence, remedy }];
    },
  };
}
