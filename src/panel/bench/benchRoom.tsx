// A part of the bench that most rigs do without, one press behind. One in which something is marked opens by itself, and then stays as
// the person leaves it.
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { BenchFaults } from './reckon.ts';
import type { Quantity } from './values.ts';

interface Props {
  readonly title: string;
  readonly marked?: boolean;
  readonly children: ComponentChildren;
}

export const BenchRoom = ({ title, marked = false, children }: Props) => (
  <Opening class="room" marked={marked} title={<h2>{title}</h2>}>
    {children}
  </Opening>
);

/** Within a room. */
export const FinerRoom = ({ title, marked = false, children }: Props) => (
  <Opening class="finer" marked={marked} title={title}>
    {children}
  </Opening>
);

function Opening({ title, marked, children, ...rest }: { class: string; title: ComponentChildren; marked: boolean; children: ComponentChildren }) {
  const [open, setOpen] = useState(marked);
  useEffect(() => {
    if (marked) setOpen(true);
  }, [marked]);
  return (
    <details {...rest} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      <div class="stack">{children}</div>
    </details>
  );
}

export const isMarked = (faults: BenchFaults, fields: readonly Quantity[]): boolean => fields.some((field) => faults[field] !== undefined);
