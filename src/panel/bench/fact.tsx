// One figure of the bench with its name, and a sentence that does not fit anywhere else.
import type { ComponentChildren } from 'preact';

export function Fact({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </>
  );
}

/** What follows from the fields above it: said when it changes. */
export const Says = ({ children }: { readonly children: ComponentChildren }) => <output>{children}</output>;
