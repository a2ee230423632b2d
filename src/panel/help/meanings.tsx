// In a sweep, behind one press: what each word that is understood now means.
import { useState } from 'preact/hooks';
import type { SweepState } from '../../sweep/state.ts';
import { words } from '../../words/catalogue.ts';
import { PossibleNow } from './possibleNow.tsx';

/** Drawn only while it is open, since it changes with every phase. */
export function Meanings({ sweep }: { readonly sweep: SweepState }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{words('help').now.title}</summary>
      {open && <PossibleNow sweep={sweep} />}
    </details>
  );
}
