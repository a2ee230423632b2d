// Where in the panel the person is, and the way back.
import type { PictureSource } from './photographs/pictureSource.ts';
import { computed, signal, type ReadonlySignal } from '@preact/signals';

export type Place =
  | {
      readonly at:
        | 'start'
        | 'next'
        | 'practice'
        | 'sweep'
        | 'logbook'
        | 'kit'
        | 'plan'
        | 'files'
        | 'settings'
        | 'help'
        | 'about'
        | 'bench'
        | 'walk'
        | 'training'
        | 'voice';
    }
  | { readonly at: 'record' | 'entering' | KitPlace; readonly id: string }
  /** `situation`: of the pictures, where it is known. */
  | { readonly at: 'photographs'; readonly situation: string | null }
  /** `of`: the practice camera that takes them; null for any. */
  | { readonly at: 'practice pictures'; readonly of: PictureSource | null }
  /** `byHand`: to put a value in. */
  | { readonly at: 'situation'; readonly id: string; readonly byHand?: true };

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
