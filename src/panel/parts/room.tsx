// A part of a screen behind one press, with what it says in short beside its name. A closed one stays a stop for the Tab key, and a
// browser's own search finds what is in it.
import type { ComponentChildren } from 'preact';

interface Props {
  readonly title: string;
  /** What is in it, in a few words. */
  readonly state?: string | undefined;
  /** Of several rooms with one name only one is open. */
  readonly name?: string;
  readonly open?: boolean | undefined;
  readonly children: ComponentChildren;
}

export const ScreenRoom = ({ title, state, name, open, children }: Props) => (
  <details class="room" name={name} open={open}>
    <summary>
      <h2>{title}</h2>
      {state && <span class="muted small">{state}</span>}
    </summary>
    <div class="stack">{children}</div>
  </details>
);
