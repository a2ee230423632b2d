// The figures of the bench with their names, and a sentence that does not fit anywhere else.
import { Fragment, type ComponentChildren } from 'preact';
import type { Figure } from '../../words/benchWords.ts';

export function Facts({ all }: { readonly all: readonly Figure[] }) {
  return (
    <dl class="facts">
      {all.map(({ name, value, note }) => (
        <Fragment key={name}>
          <dt>{name}</dt>
          <dd>
            {value}
            {note && <small>{note}</small>}
          </dd>
        </Fragment>
      ))}
    </dl>
  );
}

/** What follows from the fields above it: said when it changes. */
export const Says = ({ children }: { readonly children: ComponentChildren }) => <output>{children}</output>;
