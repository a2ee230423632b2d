// A part of the panel whose script is read when it is first wanted. It lies beside the panel, so that takes a moment; until
// then one line stands in its place, and a sentence if it cannot be read.
import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { UNREAD } from '../../unread.ts';
import { readWords, type Area } from '../../words/catalogue.ts';

export type Late<Props> = ComponentType<Props> & {
  /** Reads it before it is shown. */
  fetch(): void;
};

/** `areas`: the words that it shows, read with it. */
export function late<Props extends object>(load: () => Promise<ComponentType<Props>>, ...areas: readonly Area[]): Late<Props> {
  const part = signal<{ readonly Part: ComponentType<Props> } | 'unread' | 'reading' | 'failed'>('unread');

  function fetch(): void {
    if (part.peek() !== 'unread') return;
    part.value = 'reading';
    const ready = areas.length === 0 ? load() : Promise.all([load(), readWords(...areas)]).then(([Part]) => Part);
    ready.then(
      (Part) => (part.value = { Part }),
      () => (part.value = 'failed'),
    );
  }

  function Place(props: Props) {
    useEffect(fetch, []);
    const read = part.value;
    if (read === 'failed') return <p role="alert">{UNREAD}</p>;
    return typeof read === 'string' ? <p class="muted">Opening…</p> : <read.Part {...props} />;
  }
  return Object.assign(Place, { fetch });
}
