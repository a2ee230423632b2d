// Only the first of many pictures are drawn until more are wanted, so that a key is answered at once while hundreds are read.
import { useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { words } from '../../words/catalogue.ts';

/** More than the longest series asks for. */
const DRAWN = 40;
const MORE = 200;

interface FirstOf<Item> {
  readonly drawn: readonly Item[];
  /** The button that draws more; null where all are drawn. */
  readonly more: ComponentChildren;
}

export function useFirstOf<Item>(all: readonly Item[]): FirstOf<Item> {
  const [count, setCount] = useState(DRAWN);
  const more =
    all.length > count ? (
      <button type="button" onClick={() => setCount(count + MORE)}>
        {words('photographs').more(all.length)}
      </button>
    ) : null;
  return { drawn: all.slice(0, count), more };
}
