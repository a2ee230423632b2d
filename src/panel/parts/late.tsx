// A part of the panel whose script is read when it is first wanted. It lies beside the panel, so that takes a moment; until
// then one line stands in its place, and a sentence if it cannot be read.
import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { readWords, type Area } from '../../words/catalogue.ts';
import { firstWords } from '../../words/first.ts';

export type Late<Props> = ComponentType<Props> & {
  /** Reads it before it is shown; resolves when it is there or cannot be read. */
  fetch(): Promise<void>;
  /** It has been read, so where it is shown it takes what is pressed. */
  isThere(): boolean;
};

/** `areas`: the words that it shows, read with it. */
export function late<Props extends object>(load: () => Promise<ComponentType<Props>>, ...areas: readonly Area[]): Late<Props> {
  const part = signal<{ readonly Part: ComponentType<Props> } | 'unread' | 'reading' | 'failed'>('unread');

  let reading: Promise<void> | null = null;

  function fetch(): Promise<void> {
    reading ??= read();
    return reading;
  }

  async function read(): Promise<void> {
    part.value = 'reading';
    const ready = areas.length === 0 ? load() : Promise.all([load(), readWords(...areas)]).then(([Part]) => Part);
    await ready.then(
      (Part) => (part.value = { Part }),
      () => (part.value = 'failed'),
    );
  }

  function Place(props: Props) {
    useEffect(() => void fetch(), []);
    const state = part.value;
    if (state === 'failed') return <p role="alert">{firstWords().unread}</p>;
    return typeof state === 'string' ? <p class="muted">{firstWords().opening}</p> : <state.Part {...props} />;
  }
  return Object.assign(Place, { fetch, isThere: () => typeof part.value === 'object' });
}
