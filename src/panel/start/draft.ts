// What was typed and told on the start screen. It outlives the screen, so a look at the help loses nothing.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Description } from '../session/session.ts';

export interface Draft {
  /** What stands in the look-up field: the beginning of a name the logbook knows, or a new one. */
  readonly query: string;
  /** A situation of the kit that was picked. */
  readonly picked: string | null;
  /** What was told by the chips, over what was picked or typed. */
  readonly about: Description;
}

export const EMPTY_DRAFT: Draft = { query: '', picked: null, about: {} };

export interface DraftStore {
  readonly draft: ReadonlySignal<Draft>;
  change(patch: Partial<Draft>): void;
  tell(told: Description): void;
}

export function newDraft(): DraftStore {
  const draft = signal(EMPTY_DRAFT);
  const change = (patch: Partial<Draft>): void => void (draft.value = { ...draft.value, ...patch });
  return { draft, change, tell: (told) => change({ about: { ...draft.value.about, ...told } }) };
}
