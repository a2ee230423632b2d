// Where in the panel the person is, and the way back.
import { computed, signal, type ReadonlySignal } from '@preact/signals';

export type Place =
  | { readonly at: 'start' | 'sweep' | 'logbook' | 'kit' | 'files' | 'settings' | 'help' | 'training' }
  | { readonly at: 'record' | 'situation' | KitPlace; readonly id: string };

/** One piece of kit; an empty id is a new one. */
export type KitPlace = 'body' | 'lens' | 'converter';

export interface Way {
  readonly place: ReadonlySignal<Place>;
  go(to: Place): void;
  back(): void;
  /** To this place, with the start behind it. */
  home(to: Place): void;
}

const START: Place = { at: 'start' };

export function newWay(): Way {
  const trail = signal<readonly Place[]>([START]);
  return {
    place: computed(() => trail.value.at(-1) ?? START),
    go: (to) => (trail.value = [...trail.value, to]),
    back: () => (trail.value = trail.value.length > 1 ? trail.value.slice(0, -1) : trail.value),
    home: (to) => (trail.value = to.at === 'start' ? [START] : [START, to]),
  };
}
